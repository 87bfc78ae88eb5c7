cp -r "$CASE/mine" .
"$GAUGEBOX" mix --mixes mine | grep -A1 yard
"$GAUGEBOX" mix yard --mixes mine
"$GAUGEBOX" mix yard/soft-1-5 --mixes mine | sed -n "/^=/,/^ORDER/p"
echo "exit $?"
