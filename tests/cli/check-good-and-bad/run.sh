cp "$CASE"/*.cfg .
"$GAUGEBOX" check porch.cfg faults.cfg yard.cfg
echo "exit $?"
"$GAUGEBOX" check porch.cfg yard.cfg
echo "exit $?"
"$GAUGEBOX" check porch.cfg nowhere.cfg
echo "exit $?"
