cp "$CASE"/*.cfg .
"$GAUGEBOX" price job.cfg
echo "exit $?"
