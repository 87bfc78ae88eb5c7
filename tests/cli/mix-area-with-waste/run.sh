"$GAUGEBOX" mix bed/stiff-1-4 --area 40ft2 --depth 1-1/4in --waste 10% | sed -n "/^GAUGE/,/^ORDER/p"
