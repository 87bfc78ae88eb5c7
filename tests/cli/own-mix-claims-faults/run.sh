cp -r "$CASE/mine" .
"$GAUGEBOX" mix yard/of-type-t --mixes mine
echo "exit $?"
mkdir bag && sed -n '/^format/p;/^mixes/p;/name = "a-bag"/,$p' mine/yard.cfg >bag/yard.cfg
"$GAUGEBOX" mix yard/a-bag --mixes bag
echo "exit $?"
