"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" -o /dev/full
echo "exit $?"
ls
