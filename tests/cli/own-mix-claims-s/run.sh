cp -r "$CASE/mine" "$CASE/job.cfg" .
"$GAUGEBOX" mix yard/s-rich-in-sand --mixes mine | sed -n 1,13p
"$GAUGEBOX" sheet job.cfg --mixes mine | grep -A 2 "^NEED\|^CAUTION"
"$GAUGEBOX" sheet job.cfg --mixes mine --format json | grep -A 5 C_SAND
"$GAUGEBOX" sheet job.cfg --mixes mine --explain=C_SAND_MUCH.value
"$GAUGEBOX" mix yard/s-rich-in-sand --mixes mine --explain=C_SAND_MUCH.limit | sed -n 5,9p
"$GAUGEBOX" check job.cfg --mixes mine
echo "exit $?"
