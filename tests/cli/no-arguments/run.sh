"$GAUGEBOX" >out.txt
echo "exit $?"
wc -c <out.txt
