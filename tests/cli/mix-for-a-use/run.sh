"$GAUGEBOX" mix --for pointing
echo "exit $?"
"$GAUGEBOX" mix mortar --for bed --for core
echo "exit $?"
