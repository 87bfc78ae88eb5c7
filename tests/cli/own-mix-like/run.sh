# What an entry does not state comes from the one that it is like, and the sheet says so.
cp -r "$CASE/mine" .
"$GAUGEBOX" mix yard/rich-bed-slow --mixes mine | sed -n '/^MIX/,/^GAUGE/p'
"$GAUGEBOX" mix yard/rich-bed-slow --mixes mine | grep '^LIFE'
"$GAUGEBOX" mix yard/rich-bed-slow --mixes mine --explain=LIFE.life
