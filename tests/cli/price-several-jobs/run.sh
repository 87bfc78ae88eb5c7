cp "$CASE"/*.cfg .
"$GAUGEBOX" price porch.cfg yard.cfg --prices book.cfg
echo "exit $?"
