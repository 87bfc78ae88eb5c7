"$GAUGEBOX" mix bed
echo "exit $?"
"$GAUGEBOX" mix grout --format json
echo "exit $?"
