cp -r "$CASE/mine" .
for mix in ring/a long/j odd/unknown; do
    "$GAUGEBOX" mix "$mix" --mixes mine
    echo "exit $?"
done
