cp -r "$CASE/mine" .
"$GAUGEBOX" mix yard/soft-1-5 --mixes mine
echo "exit $?"
