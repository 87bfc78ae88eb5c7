"$GAUGEBOX" --help 2>err.txt
echo "exit $?"
wc -c <err.txt
