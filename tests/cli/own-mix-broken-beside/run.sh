# One family is listed whatever is wrong with another; the whole table is not.
cp -r "$CASE/mine" .
"$GAUGEBOX" mix grout --mixes mine | grep "^[a-z]*/"
"$GAUGEBOX" mix yard --mixes mine
echo "exit $?"
"$GAUGEBOX" mix --for core --mixes mine
echo "exit $?"
"$GAUGEBOX" mix --explain
echo "exit $?"
