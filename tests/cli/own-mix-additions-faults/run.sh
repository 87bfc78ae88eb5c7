cp -r "$CASE/mine" .
"$GAUGEBOX" mix odd/none --mixes mine
echo "exit $?"
