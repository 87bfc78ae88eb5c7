"$GAUGEBOX" mix --mixes nowhere
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --mixes nowhere >out.txt
echo "exit $?"
"$GAUGEBOX" sheet "$EXAMPLES/library-entrance/job.cfg" --mixes nowhere >out.txt
echo "exit $?"
