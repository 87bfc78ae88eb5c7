"$GAUGEBOX" mix bed/stiff-1-4 --make 3ft3 --waste 1000%
echo "exit $?"
