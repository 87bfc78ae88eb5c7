"$GAUGEBOX" mix bed/stiff-1-4 --make 0ft3
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --make 5
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --make 3ft
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --bags 0
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --bags two
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --make=-3ft3
echo "exit $?"
"$GAUGEBOX" mix --make 3ft3
echo "exit $?"
