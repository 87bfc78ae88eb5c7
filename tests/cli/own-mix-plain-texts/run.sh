cp -r "$CASE/mine" .
"$GAUGEBOX" mix yard/soft-1-5 --mixes mine | sed '/^WATER/,/wet/d'
echo "exit $?"
sed -i 's/purpose = "[^"]*"/purpose = " "/; s/check = "[^"]*"/check = 3/; s/"first water", /"first water", "", 7, /' mine/yard.cfg
"$GAUGEBOX" mix yard/soft-1-5 --mixes mine
echo "exit $?"
