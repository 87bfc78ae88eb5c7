"$GAUGEBOX" mix bed/stiff-1-4 --bucket 0ft3
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --bucket 12
echo "exit $?"
