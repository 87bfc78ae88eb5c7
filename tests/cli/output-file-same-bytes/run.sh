"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" >printed.txt
echo "exit $?"
"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" -o written.txt
echo "exit $?"
cmp printed.txt written.txt && echo same
ls
