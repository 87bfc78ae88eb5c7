"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" -o nowhere/sheet.txt
echo "exit $?"
ls
