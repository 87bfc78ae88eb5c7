"$GAUGEBOX" sheet --colour "$EXAMPLES/library-entrance/job.cfg"
echo "exit $?"
