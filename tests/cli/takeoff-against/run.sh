# One step fewer, a piece taken away and another added, no change at all.
old=$EXAMPLES/library-entrance/job.cfg
sed 's/count = 7/count = 6/' "$old" >fewer.cfg
sed 's/name = "landing"/name = "upper landing"/; s/depth = "1-1\/2 in"/depth = "1-3\/4 in"/' "$old" >renamed.cfg
"$GAUGEBOX" takeoff fewer.cfg --against "$old" --prices "$EXAMPLES/library-entrance/prices.cfg"
echo "exit $?"
"$GAUGEBOX" takeoff renamed.cfg --against "$old" --units metric
echo "exit $?"
"$GAUGEBOX" takeoff "$old" --against "$old" --prices "$EXAMPLES/library-entrance/prices.cfg"
echo "exit $?"
"$GAUGEBOX" takeoff "$EXAMPLES/boathouse-steps/job.cfg" --against "$old" >two.txt
sed -n 1,40p two.txt
"$GAUGEBOX" takeoff fewer.cfg --against "$old" --format csv >table.csv
sed 's/^[0-9a-f]\{8\},/--------,/' table.csv
echo "exit $?"
# Faults of both jobs and of the price book in one go.
sed 's/count = 7/count = 0/' "$old" >none.cfg
sed 's/pace = /pases = /' "$old" >unknown.cfg
echo 'format = 1; currency = 7;' >bad-prices.cfg
"$GAUGEBOX" takeoff none.cfg --against unknown.cfg --prices bad-prices.cfg
echo "exit $?"
"$GAUGEBOX" takeoff "$old" --against nowhere.cfg
echo "exit $?"
"$GAUGEBOX" takeoff "$old" --prices bad-prices.cfg
echo "exit $?"
