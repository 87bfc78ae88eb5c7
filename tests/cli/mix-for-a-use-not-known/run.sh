"$GAUGEBOX" mix --for bedd
echo "exit $?"
"$GAUGEBOX" mix --for roof
echo "exit $?"
"$GAUGEBOX" mix slurry --for bed
echo "exit $?"
"$GAUGEBOX" mix --for slurry --for slab
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --for bed
echo "exit $?"
