cp -r "$CASE/mine" .
"$GAUGEBOX" mix --mixes mine | grep -A1 ^bed/
"$GAUGEBOX" mix bed/stiff-1-4 --mixes mine | sed -n 1,2p
"$GAUGEBOX" mix bed/stiff-1-3 --mixes mine | sed -n 1,2p
