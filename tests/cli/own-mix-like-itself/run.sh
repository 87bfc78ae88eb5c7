# An entry of the same id builds on the shipped one that it hides.
cp -r "$CASE/mine" .
"$GAUGEBOX" mix bed/stiff-1-4 --mixes mine | sed -n -e 2p -e '/^MIX/,/^FOR/p' -e '/^LIFE/p'
