"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" >&-
echo "exit $?"
"$GAUGEBOX" --help >&-
echo "exit $?"
"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" -o sheet.txt >&-
echo "exit $?, $(head -n 2 sheet.txt | tail -n 1)"
