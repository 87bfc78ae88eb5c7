"$GAUGEBOX" mix bed/stiff-1-7
echo "exit $?"
"$GAUGEBOX" mix stiff-1-4
echo "exit $?"
"$GAUGEBOX" mix materials/portland-cement
echo "exit $?"
