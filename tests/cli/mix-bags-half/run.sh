"$GAUGEBOX" mix bed/stiff-1-4 --bags 1/2 | sed -n "/^GAUGE/,/^ORDER/p"
"$GAUGEBOX" mix mortar/type-s --bags 1/2 | sed -n "/^GAUGE/,/^ORDER/p"
