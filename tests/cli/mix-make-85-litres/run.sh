"$GAUGEBOX" mix bed/stiff-1-4 --make 85L --bucket 10L --units metric | sed -n "/^GAUGE/,/^ORDER/p"
