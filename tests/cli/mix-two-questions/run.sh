"$GAUGEBOX" mix bed/stiff-1-4 --make 3ft3 --bags 2
echo "exit $?"
