cp -r "$CASE/mine" "$CASE/job.cfg" .
"$GAUGEBOX" sheet job.cfg --mixes mine
echo "exit $?"
