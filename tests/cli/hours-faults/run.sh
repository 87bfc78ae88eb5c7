# Hours that are none: every fault by its line, and nothing is printed.
cat >job.cfg <<'END'
format = 1;
site = { name = "s"; };
crew = { mixer = { usable = "6 ft3"; }; start = "07:00"; finish = "15:00"; };
weather = { hours = "weather.csv"; utc_offset = "-05:00"; day = "2026-03-08"; };
pieces = ( { name = "landing"; kind = "landing"; size = "5 ft x 6 ft";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1-1/2 in"; } ); } );
END
# Five good days; sed makes one line of them bad.
good() {
    echo 'time,air_f,humidity_pct,wind_mph,rain_in'
    for day in 07 08 09 10 11 12; do
        for hour in 00 01 02 03 04 05 06 07 08 09 10 11 12 13 14 15 16 17 18 19 20 21 22 23; do
            echo "2026-03-${day}T$hour:00,50.5,60,7,0"
        done
    done
}
try() { # NAME SED
    printf '== %s\n' "$1"
    good | sed -E "$2" >weather.csv
    check
}
check() {
    "$GAUGEBOX" sheet job.cfg >out.txt
    echo "exit $?, $(wc -c <out.txt) bytes"
}
good >weather.csv
"$GAUGEBOX" sheet job.cfg | grep -A3 '^TODAY'
try "Fahrenheit in a Celsius column" '1s/air_f/air_c/; 30s/50.5/68/'
try "humidity over 100" '12s/,60,/,101,/'
try "humidity as a share" 's/,60,/,0.6,/'
try "9999" '9s/50.5/9999/'
try "-9999 and NA" '9s/50.5/-9999/; 10s/,60,/,NA,/'
try "a gap" '40d'
try "two gaps" '40d; 50,52d'
try "an hour twice" '40p'
try "out of order" '40{h;d}; 41G'
try "an empty cell" '40s/50.5//'
try "a cell too few" '40s/,0$//'
try "a cell too many" '40s/$/,1/'
try "cut off in a row" '90s/,7,0$//; 91,$d'
try "cut off in a quote" '90s/50.5/"50.5/; 91,$d'
try "a quote within a cell" '40s/50.5/5"0.5/'
try "a comma in a number" '40s/50.5/"50,5"/'
try "a unit in a cell" '40s/50.5/50.5 F/'
try "an exponent" '40s/50.5/5e1/'
try "nan and inf" '40s/50.5/nan/; 41s/50.5/inf/'
try "wind in km\/h named mph" '40s/,7,/,118,/'
try "negative wind" '40s/,7,/,-7,/'
try "rain of a yard" '40s/,0$/,36/'
try "clocks go forward" '27d'
try "clocks go back" '27p'
try "no time" '40s/2026-03-08T14:00/8 March, 2 pm/'
try "a day that is none" '40s/2026-03-08/2026-02-30/'
try "half hours" '40s/:00/:30/'
try "too short" '60,$d'
try "too late" '2,40d'
try "no hours" '2,$d'
try "no head" '1d'
try "a quote that closes rows later" '40s/50.5/"50.5/; 43s/,60,/",60,/'
try "carriage returns alone" '40s/$/\r/; 40{N;s/\n//}'
try "semicolons" 's/,/;/g'
try "a column of per cent is not one to leave out" '1s/humidity_pct/% x_y/'
try "more faults than one" '9s/50.5/9999/; 20s/,60,/,140,/; 40d; 77s/T03/T25/'
printf '== empty\n'; : >weather.csv; check
printf '== a NUL\n'; good | sed '9s/50.5/5\x000/' >weather.csv; check
printf '== Latin-1\n'; good | sed '1s/air_f/temp\xe9rature_f/' >weather.csv; check
printf '== a picture\n'; head -c 4000 "$GAUGEBOX" >weather.csv; check
printf '== a million rows\n'; { good; yes '2026-03-12T23:00,50.5,60,7,0'; } | head -n 1000000 >weather.csv; check
printf '== over 100,000 rows\n'; { good; yes '' | head -n 100000; } >weather.csv; check
printf '== a folder\n'; rm weather.csv; mkdir weather.csv; check
printf '== not there\n'; rmdir weather.csv; check
