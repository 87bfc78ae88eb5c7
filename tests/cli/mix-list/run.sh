"$GAUGEBOX" mix
echo "exit $?"
