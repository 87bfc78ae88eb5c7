# A job may hold mixes of its own; another job of the same run does not know them.
cp "$CASE/job.cfg" .
sed '/^mixes/,/^);/d' job.cfg >other.cfg
"$GAUGEBOX" sheet job.cfg | sed -n '/^MIX/,/^NEED/p'
"$GAUGEBOX" takeoff job.cfg --explain=NEED_BAGS.yield | grep -n 'job.cfg:'
"$GAUGEBOX" check job.cfg other.cfg
echo "exit $?"
echo "the same id in the user's folder:"
mkdir mine
{ echo "format = 1;"; sed -n '/^mixes/,/^);/p' job.cfg; } >mine/own.cfg
"$GAUGEBOX" check job.cfg --mixes mine
"$GAUGEBOX" check other.cfg --mixes mine
