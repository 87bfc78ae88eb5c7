# Two pieces name a mix of a broken family; the job has a fault of its own on a line
# before them, which is found after them.
cp -r "$CASE/mine" "$CASE/job.cfg" .
"$GAUGEBOX" sheet job.cfg --mixes mine
echo "exit $?"
