# A price that is long and has a sign of several bytes where it is cut for the message.
cp "$EXAMPLES"/library-entrance/job.cfg .
sed 's/price = "[^"]*"/price = "000000000000000000000000000000000000000½"/' \
    "$EXAMPLES"/library-entrance/prices.cfg >prices.cfg
"$GAUGEBOX" price job.cfg 2>err.txt
echo "exit $?"
head -n 1 err.txt
iconv -f UTF-8 -t UTF-8 err.txt >/dev/null && echo "the whole is UTF-8"
