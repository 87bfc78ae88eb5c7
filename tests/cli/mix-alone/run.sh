"$GAUGEBOX" mix bed/stiff-1-4
echo "exit $?"
