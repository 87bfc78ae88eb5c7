# Names that a spreadsheet would take for formulas, and what RFC 4180 wants quoted.
cat >job.cfg <<'EOF'
format = 1;
site = { name = "Orchard gate"; };
crew = { mixer = { usable = "3 ft3"; }; };
pieces = (
  { name = "=1+1"; kind = "landing"; size = "4 ft x 3 ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); },
  { name = "-2"; kind = "landing"; size = "4 ft x 3 ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); },
  { name = "@sum"; kind = "landing"; size = "4 ft x 3 ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); },
  { name = "+3"; kind = "landing"; size = "4 ft x 3 ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); },
  { name = "a \"small\" one, flat"; kind = "landing"; size = "4 ft x 3 ft";
    layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); }
);
EOF
"$GAUGEBOX" takeoff job.cfg --format csv >out.csv
echo "exit $?"
sed -E 's/^[0-9a-f]{8},/--------,/; s/\r$/<cr>/' out.csv
/usr/bin/python3 -c 'import csv
for row in csv.reader(open("out.csv", newline="")): print(len(row), row[2])'
