"$GAUGEBOX" mix bed/stiff-1-4 --area 40ft2
echo "exit $?"
"$GAUGEBOX" mix bed/stiff-1-4 --depth 1in
echo "exit $?"
