"$GAUGEBOX" keys weather >out.txt
echo "exit $?"
wc -c <out.txt | tr -d " "
"$GAUGEBOX" keys job mixes
echo "exit $?"
