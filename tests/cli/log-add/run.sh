# Batches are added one by one; the file's own columns, order and line ends stay.
job=$EXAMPLES/library-entrance/job.cfg
add() {
    "$GAUGEBOX" log "$job" "$log" add "$@" 2>&1
    echo "exit $?"
}
log=new.csv
add --mix bed/stiff-1-4 --bags 1 --set "5 treads" --date 2026-05-12 --time 07:30 \
    --start 07:42 --stop 09:22 --water 10.5qt --depth "1-1/4in 1-5/16in 32mm" --air 61F \
    --lot 'C 118, "grey"' --remark "first, fine" --thrown 2.5%
add --mix slurry/neat --bags 1/32 --set "1 treads" --date 2026-05-12 --time 07:42
add --mix bed/stiff-1-4 --bags 5/8 --set "2 treads + 0.45 landing" --date 2026-05-12 --time 10:15 --air 15C
cat new.csv
"$GAUGEBOX" log "$job" new.csv | grep -v '^PLAN'
echo "== columns of its own, CRLF, another order"
log=own.csv
printf 'mix,x_who,set,bags,batch,time,date,air_c\r\nbed/stiff-1-4,Ann,3 treads,1,4,07:30,2026-05-12,9\r\n' >own.csv
add --mix bed/stiff-1-4 --bags 1 --set "2 treads" --date 2026-05-12 --time 09:30 --air 50F
od -c own.csv | sed -n 's/^[0-9]* *//p' | tr -d ' \n' | sed 's/\\r\\n/\\r\\n\n/g'
add --mix bed/stiff-1-4 --bags 1 --set "1 treads" --date 2026-05-12 --time 10:30 --lot "C 1"
echo "== only one mix: it need not be named; a bare count is of its only piece"
log=one.csv
cat >one.cfg <<'END'
format = 1; units = "metric"; site = { name = "s"; }; crew = { mixer = { usable = "100 L"; }; };
pieces = ( { name = "slabs"; kind = "tread"; count = 4; size = "1 m x 350 mm";
             layers = ( { kind = "bed"; mix = "bed/stiff-1-4"; depth = "30 mm"; } ); } );
END
"$GAUGEBOX" log one.cfg one.csv add --bags 1 --set 2.5 --water 9.5L --date 2026-05-12 --time 08:00
cat one.csv
echo "== a link stays a link, the mode stays, and the row is in the file"
mkdir real; ln -s real/log.csv link.csv; log=link.csv
add --mix bed/stiff-1-4 --bags 1 --set "1 treads" --date 2026-05-12 --time 08:00 | sed 's/link.csv/LINK/'
chmod 640 real/log.csv
add --mix bed/stiff-1-4 --bags 1 --set "1 treads" --date 2026-05-12 --time 09:00 >/dev/null
[ -L link.csv ] && stat -c %a real/log.csv && wc -l <real/log.csv
echo "== without a clock of one's own, that of the machine"
log=now.csv
add --mix bed/stiff-1-4 --bags 1 --set "1 treads"
grep -cE "^$(date +%Y)-[0-9]{2}-[0-9]{2},[0-9]{2}:[0-9]{2},bed/stiff-1-4,1,1," now.csv
echo "== a file that was there and is empty stays, whatever comes of it"
log=empty.csv
: >empty.csv
add --mix bed/stiff-1-4 --bags 0 --set "1 treads"
wc -c <empty.csv
add --mix bed/stiff-1-4 --bags 1 --set "1 treads"
wc -l <empty.csv
echo "== what is no plain file, or is gone, takes no row"
echo | "$GAUGEBOX" log "$job" /dev/stdin add --mix bed/stiff-1-4 --bags 1 --set "1 treads"
echo "exit $?"
exec 3<>gone.csv
rm gone.csv
"$GAUGEBOX" log "$job" /dev/fd/3 add --mix bed/stiff-1-4 --bags 1 --set "1 treads"
echo "exit $?"
exec 3>&-
"$GAUGEBOX" log "$job" /dev/full add --mix bed/stiff-1-4 --bags 1 --set "1 treads"
echo "exit $?"
echo "== wrong usage"
"$GAUGEBOX" log "$job" new.csv add --lot A --lot B 2>&1 | head -1
"$GAUGEBOX" log "$job" 2>&1 | head -1
"$GAUGEBOX" log "$job" new.csv --bags 1 2>&1 | head -1
"$GAUGEBOX" log "$job" new.csv remove 2>&1 | head -1
"$GAUGEBOX" log "$job" new.csv add --format json 2>&1 | head -1
ls
