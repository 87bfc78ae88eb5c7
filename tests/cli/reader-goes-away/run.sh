# A long text, and a reader that stops after one line.
{ "$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" 2>err.txt; echo "exit $?" >status.txt; } | head -n 2
grep -c -e "exit 0" -e "exit 3" status.txt
