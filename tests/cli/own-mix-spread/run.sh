cp -r "$CASE/mine" "$CASE/job.cfg" .
"$GAUGEBOX" takeoff job.cfg --mixes mine | grep -A 4 "^MIX"
"$GAUGEBOX" takeoff job.cfg --mixes mine --format json | grep -A 8 BAGS_SPREAD
"$GAUGEBOX" takeoff job.cfg --mixes mine --explain=BAGS_SPREAD.spread | sed -n 5,20p
mkdir unsure && cp "$CASE/unsure.cfg" unsure/yard.cfg
"$GAUGEBOX" takeoff job.cfg --mixes unsure
echo "exit $?"
