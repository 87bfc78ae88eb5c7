cp "$CASE/job.cfg" .
"$GAUGEBOX" check job.cfg
echo "exit $?"
