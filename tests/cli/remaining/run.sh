# What is left, with bags on hand and without; a job that is done; wrong usage.
job=$EXAMPLES/library-entrance/job.cfg
log=$EXAMPLES/library-entrance/log.csv
cp "$log" log.csv
"$GAUGEBOX" remaining "$job" log.csv
"$GAUGEBOX" remaining "$job" log.csv --on-hand bed/stiff-1-4=1/2 --sure 99 --lead 3 | grep -E '^(TO F|ON H|ORDER)' -A1
"$GAUGEBOX" remaining "$job" log.csv --on-hand bed/stiff-1-4=5 --units metric | sed -n '/^LEFT/,/^$/p'
"$GAUGEBOX" log "$job" log.csv add --mix bed/stiff-1-4 --bags 5/8 --set "0.55 landing" --date 2026-05-12 --time 13:00 --start 13:10 --stop 15:40
"$GAUGEBOX" remaining "$job" log.csv | sed -n '/^LEFT/,/^$/p'
"$GAUGEBOX" log "$job" log.csv | grep '^Batch'
for words in "--on-hand 3" "--on-hand bed/none=3" "--on-hand bed/stiff-1-4=x" \
    "--on-hand bed/stiff-1-4=-1" "--lead -1" "--lead x" "--sure 92" "more"; do
    "$GAUGEBOX" remaining "$job" log.csv $words 2>&1 | head -1
done
"$GAUGEBOX" takeoff "$job" --sure 95 | grep -A1 sure
"$GAUGEBOX" price "$job" --sure 7 2>&1 | head -1
