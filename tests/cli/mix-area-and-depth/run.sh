"$GAUGEBOX" mix bed/stiff-1-4 --area 40ft2 --depth 1-1/4in | sed -n "/^GAUGE/,/^ORDER/p"
