"$GAUGEBOX" sheet --units imperial "$EXAMPLES/library-entrance/job.cfg"
echo "exit $?"
