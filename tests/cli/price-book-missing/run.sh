cp "$CASE/job.cfg" .
"$GAUGEBOX" price job.cfg
echo "exit $?"
"$GAUGEBOX" price job.cfg --prices nowhere.cfg
echo "exit $?"
