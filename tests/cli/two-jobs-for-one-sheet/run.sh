"$GAUGEBOX" sheet one.cfg two.cfg
echo "exit $?"
"$GAUGEBOX" takeoff one.cfg two.cfg
echo "exit $?"
