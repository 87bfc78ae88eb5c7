# A stone of one's own goes before a shipped one of the same name.
cp -r "$CASE/mine" "$CASE/job.cfg" .
"$GAUGEBOX" takeoff job.cfg --mixes mine | sed -n '/^ORDER/,/^FREIGHT/p'
"$GAUGEBOX" takeoff job.cfg --mixes mine --explain=STONE_CUT.most | grep density -A 3
"$GAUGEBOX" takeoff job.cfg --mixes mine --explain=STONE_CUT.most | grep 'stones.cfg'
"$GAUGEBOX" takeoff job.cfg | sed -n '/^FREIGHT/p'
"$GAUGEBOX" takeoff job.cfg --mixes mine --format csv | cut -d, -f2-
