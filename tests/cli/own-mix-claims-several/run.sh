cp -r "$CASE/mine" .
for mix in n-of-half-lime s-of-portland-and-m ii-too-lean coarse-without-stone m-of-n m-of-little-lime \
    o-of-much-lime iv-too-rich fine-with-stone s-of-equal-parts; do
    "$GAUGEBOX" mix "yard/$mix" --mixes mine | sed -n '/^CLAIMS/,/^GAUGE/p'
done
