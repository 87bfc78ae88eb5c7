# The day of the demo, and of a job with all stages over a week.
"$GAUGEBOX" day "$EXAMPLES/library-entrance/job.cfg"
"$GAUGEBOX" day "$EXAMPLES/mill-landing/job.cfg" --units metric | sed -n '/^Day 1/,$p'
"$GAUGEBOX" day "$EXAMPLES/boathouse-steps/job.cfg" --format csv | cut -d, -f2-
# No room: a tread takes 20 min, and no two breaks are that far apart.
sed 's/breaks = .*/breaks = ( { from = "07:45"; to = "07:50"; }, { from = "08:05"; to = "15:00"; } );/' \
    "$EXAMPLES/library-entrance/job.cfg" >tight.cfg
"$GAUGEBOX" day tight.cfg | sed -n '/^What waits/,/^$/p'
echo "exit $?"
# Landing and steps are cast on footings, the day after at the earliest.
"$GAUGEBOX" day "$EXAMPLES/orchard-shed/job.cfg" | sed -n '/^Day 1/,/^LABOUR/p'
