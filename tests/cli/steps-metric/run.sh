# A job's run in metric units, and a metric run by options: levels for a staff under a laser.
"$GAUGEBOX" steps --rise "1,2 m" --tread 350mm 2>&1
"$GAUGEBOX" steps --rise 1.2m --tread 350mm --pitch 1.5% --slab 50mm --bed 30mm --footing 150mm \
    --base 200mm --overhang 25mm --bench 300mm --laser 1.45m --least-riser 150mm --most-riser 180mm
"$GAUGEBOX" steps --units metric "$EXAMPLES/terrace-steps/job.cfg" | sed -n '1,50p'
