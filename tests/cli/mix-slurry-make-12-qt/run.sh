"$GAUGEBOX" mix slurry/neat --make 12qt | sed -n "/^GAUGE/,/^ORDER/p"
