cp "$CASE"/*.cfg .
"$GAUGEBOX" price job.cfg
echo "exit $?"
"$GAUGEBOX" price job.cfg --prices other.cfg
echo "exit $?"
