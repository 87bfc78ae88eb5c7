"$GAUGEBOX" mix bedd
echo "exit $?"
"$GAUGEBOX" mix stiff-1-4
echo "exit $?"
"$GAUGEBOX" mix xyzzy
echo "exit $?"
"$GAUGEBOX" mix materials
echo "exit $?"
"$GAUGEBOX" mix ""
echo "exit $?"
"$GAUGEBOX" mix bed --bags 2
echo "exit $?"
