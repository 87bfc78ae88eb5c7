cp -r "$CASE/mine" .
for mix in n-of-half-lime s-of-portland-and-m ii-too-lean coarse-without-stone m-of-n; do
    "$GAUGEBOX" mix "yard/$mix" --mixes mine | sed -n '/^CLAIMS/,/^GAUGE/p'
done
