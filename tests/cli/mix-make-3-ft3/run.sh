"$GAUGEBOX" mix bed/stiff-1-4 --make 3ft3 | sed -n "/^GAUGE/,/^ORDER/p"
