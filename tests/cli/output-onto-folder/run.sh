mkdir sheet.txt
"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" -o sheet.txt
echo "exit $?"
ls -A . sheet.txt
