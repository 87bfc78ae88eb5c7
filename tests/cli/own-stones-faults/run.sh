cp -r "$CASE/mine" .
cp "$CASE/../own-stones/job.cfg" .
"$GAUGEBOX" takeoff job.cfg --mixes mine
echo "exit $?"
"$GAUGEBOX" mix stones
echo "exit $?"
