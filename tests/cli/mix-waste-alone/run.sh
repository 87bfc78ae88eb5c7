"$GAUGEBOX" mix bed/stiff-1-4 --waste 10%
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --bags 2 --waste 10%
echo "exit $?"
