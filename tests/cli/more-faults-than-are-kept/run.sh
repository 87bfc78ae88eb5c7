# Over 200 faults in one job, the last of them in a family of mixes, then a job that is
# good but for that family.
cp -r "$CASE/mine" "$CASE/job.cfg" .
{
    printf 'format = 1;\nsite = { name = "Bandstand"; };\ncrew = { mixer = { usable = "6 ft3"; }; };\npieces = (\n'
    for i in $(seq 220); do
        [ "$i" = 1 ] || printf ',\n'
        printf '{ name = "tread %d"; kind = "tread"; count = 0; size = "5 ft x 14 in"; ' "$i"
        printf 'layers = ( { kind = "bed"; mix = "yard/soft-1-5"; depth = "1 in"; } ); }'
    done
    printf '\n);\n'
} >many.cfg
"$GAUGEBOX" check many.cfg job.cfg --mixes mine 2>err.txt
echo "exit $?"
wc -l <err.txt
head -n 1 err.txt
grep "^and" err.txt
