# Logs that are none: every fault by its line; nothing is printed, and nothing is added.
job=$EXAMPLES/library-entrance/job.cfg
good() {
    cat <<'END'
date,time,mix,batch,bags,water_qt,start,stop,set,depth_in,thrown_pct,lot,air_f,remark
2026-05-12,07:30,bed/stiff-1-4,1,1,10.5,07:42,09:22,5 treads,1-1/4 1.5,,C 118,61,
2026-05-12,07:46,slurry/neat,1,0.034,,,,1 treads,,,,,
2026-05-12,10:16,bed/stiff-1-4,2,1,,,,2 treads + 0.45 landing,,4,,,rest thrown out
END
}
try() { # NAME SED
    printf '== %s\n' "$1"
    good | sed -E "$2" >log.csv
    look
}
look() {
    "$GAUGEBOX" log "$job" log.csv >out.txt
    echo "exit $?, $(wc -l <out.txt) lines"
    cp log.csv before.csv
    "$GAUGEBOX" log "$job" log.csv add --mix slurry/neat --bags 0.03 --set "1 treads" \
        --date 2026-05-12 --time 11:00 >out.txt 2>err.txt
    status=$?
    [ "$status" = 0 ] || cmp -s log.csv before.csv || echo "the log changed"
    echo "add: exit $status"
}
try "none" ''
try "an unknown mix" '2s/stiff-1-4/stiff-1-5/'
try "a mix that is nothing like one" '2s/bed.stiff-1-4/plaster/'
try "a date that is none" '2s/2026-05-12/12.5.2026/'
try "a day that is none" '2s/2026-05-12/2026-02-30/'
try "a time that is none" '2s/07:30/7.30 am/'
try "a time beyond the day" '2s/07:30/25:10/'
try "time running backwards" '4s/10:16/07:00/'
try "a day backwards" '4s/2026-05-12/2026-05-11/'
try "stop before start" '2s/09:22/07:41/'
try "start before the water" '2s/07:42/07:29/'
try "start without stop" '2s/09:22//'
try "batch 0" '2s/4,1,1/4,0,1/'
try "half a batch" '2s/4,1,1/4,1.5,1/'
try "batch twice" '4s/4,2,1/4,1,1/'
try "no bags" '2s/4,1,1,/4,1,0,/'
try "bags below none" '2s/4,1,1,/4,1,-1,/'
try "bags absurd" '2s/4,1,1,/4,1,1e9,/'
try "bags of the word" '2s/4,1,1,/4,1,one,/'
try "bags empty" '2s/4,1,1,/4,1,,/'
try "water below none" '2s/10.5/-3/'
try "water with its unit" '2s/10.5/10.5 qt/'
try "a piece that is not there" '2s/5 treads/5 tread/'
try "a piece that is nothing like one" '2s/5 treads/5 chimneys/'
try "a count of none" '2s/5 treads/0 treads/'
try "pieces without a count" '2s/5 treads/treads/'
try "beyond all of them" '4s/2 treads/3 treads/'
try "a bare count where there are several" '2s/5 treads/5/'
try "a depth of none" '2s/1-1.4 1.5/0 1.5/'
try "a depth torn apart" '2s|1-1.4 1.5|1 1/4|'
try "a depth of a word" '2s/1-1.4 1.5/thick/'
try "a depth beyond ten feet" '2s/1-1.4 1.5/130/'
try "many depths" "2s/1-1.4 1.5/1.25$(printf ' 1.25%.0s' $(seq 40))/"
try "thrown over all" '4s/,4,,,rest/,104,,,rest/'
try "air of the sun" '2s/,61,/,610,/'
try "a formula" '4s/rest/=rest/'
try "a cell too few" '3s/,$//'
try "a cell too many" '3s/$/,/'
try "an unknown column" '1s/lot/lots/'
try "a column that no one knows" '1s/lot/colour of the sky/'
try "a column twice" '1s/lot/water_l/'
try "no column of bags" '1s/bags/x_bags/'
try "a quote that is not closed" '2s/C 118/"C 118/'
try "a quote that swallows rows" '2s/C 118/"C 118/; 4s/rest/re"st/'
try "carriage returns alone" '2s/$/\r/; 2s/\r/\ra/'
try "several faults in one go" '2s/stiff-1-4/stiff/; 3s/07:46/7h/; 4s/0.45/-1/; 4s/,4,/,400,/'
try "a start that is none, told once" '2s/07:42/7.42/'
try "what is empty beside what is none" '2s/4,1,1,10.5/4,1,,-3/'
try "nothing but commas" '3s/.*/,,,,,,,,,,,,,/'
try "a plus without more" '4s/0.45 landing//'
try "a plus without a count" '4s/0.45 landing/landing/'
try "many pieces" "2s/5 treads/1 treads$(printf ' + 0.01 treads%.0s' $(seq 40))/"
echo "== a piece whose name holds a plus, and one layer upon another of one mix"
cat >plus.cfg <<'END'
format = 1; site = { name = "s"; }; crew = { mixer = { usable = "6 ft3"; }; };
pieces = ( { name = "treads + risers"; kind = "tread"; count = 4; size = "5 ft x 14 in";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; },
                        { kind = "bed"; mix = "bed/stiff-1-4"; depth = "2 in"; } ); },
           { name = "treads"; kind = "tread"; count = 4; size = "5 ft x 14 in";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "1 in"; } ); } );
END
plus() { # SET
    printf 'date,time,mix,batch,bags,set\n2026-05-12,07:30,bed/stiff-1-4,1,1,%s\n' "$1" >plus.csv
    "$GAUGEBOX" log plus.cfg plus.csv | sed -n '/^no/,$p'
    echo "exit ${PIPESTATUS[0]}"
}
plus '8 treads + risers+1/2 treads'
plus '9 treads + risers + 5 treads'
plus '1 treads + risers + treads'
echo "== a torn last line"
good | head -c -8 >log.csv
look
echo "== empty"
: >log.csv
"$GAUGEBOX" log "$job" log.csv
echo "exit $?"
echo "== a head alone"
good | head -1 >log.csv
"$GAUGEBOX" log "$job" log.csv | sed -n 6p
echo "== a NUL"
good | tr '8' '\000' >log.csv
look
echo "== binary"
head -c 3000 "$GAUGEBOX" >log.csv
look
echo "== a folder, and none"
mkdir folder
"$GAUGEBOX" log "$job" folder
echo "exit $?"
"$GAUGEBOX" log "$job" nowhere.csv
echo "exit $?"
"$GAUGEBOX" log "$job" folder add --mix slurry/neat --bags 1 --set "1 treads"
echo "exit $?"
"$GAUGEBOX" log "$job" nowhere/log.csv add --mix slurry/neat --bags 1 --set "1 treads"
echo "exit $?"
echo "== a new row that is none begins no log"
"$GAUGEBOX" log "$job" begun.csv add --mix slurry/neat --bags 0 --set "9 treads" --air 62 \
    --water 3 --date 2026-05-12 --time 11:00 --lot "+1" --depth "1in x"
echo "exit $?"
[ ! -e begun.csv ] || echo "it was begun"
echo "== cells of a new row that no file can hold, or no site has"
row() {
    "$GAUGEBOX" log "$job" begun.csv add --mix bed/stiff-1-4 --bags 1 --date 2026-05-12 --time 11:00 "$@"
    echo "exit $?"
}
row --remark $'two\nlines' --lot $'a\ttab'
row --remark $'a \e[31mred word' --lot $'\xff'
row --remark $'\xe2\x80\xaeturned'
row --thrown 150% --depth "1in 200in" --air 200F --water 20000qt
row --batch 1.5 --start 7h --stop 08:00
[ ! -e begun.csv ] || echo "it was begun"
echo "== a log that would be too large to be read again"
good >large.csv
{
    printf '2026-05-12,10:17,slurry/neat,2,0.03,,,,,,,,,'
    head -c "$((16 * 1024 * 1024 - $(wc -c <large.csv) - 11))" /dev/zero | tr '\0' x
    echo
} >>large.csv
cp large.csv before.csv
"$GAUGEBOX" log "$job" large.csv add --mix bed/stiff-1-4 --bags 1 --date 2026-05-12 --time 11:00
echo "exit $?"
cmp large.csv before.csv
echo "== over 100000 rows"
good >log.csv
yes '2026-05-12,10:17,slurry/neat,2,0.03,,,,,,,,,' | head -100000 >>log.csv
"$GAUGEBOX" log "$job" log.csv
echo "exit $?"
echo "== a day without a time"
good >log.csv
"$GAUGEBOX" log "$job" log.csv add --mix slurry/neat --bags 0.03 --set "1 treads" --date 2026-05-12
echo "exit $?"
