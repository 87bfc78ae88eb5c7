"$GAUGEBOX" mix bagged/setting-80lb --bags 3 | sed -n "/^GAUGE/,/^ORDER/p"
