# A pipe whose only reader has gone before the program starts.
mkfifo pipe
exec 4<>pipe 5>pipe 4<&-
"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" >&5
echo "exit $?"
"$GAUGEBOX" --help >&5
echo "exit $?"
