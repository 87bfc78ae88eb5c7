"$GAUGEBOX" mix bed/stiff-1-4 --bags 2 | sed -n "/^GAUGE/,/^ORDER/p"
