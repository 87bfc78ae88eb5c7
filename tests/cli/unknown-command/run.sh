"$GAUGEBOX" sheets "$EXAMPLES/library-entrance/job.cfg" >out.txt
echo "exit $?"
wc -c <out.txt
