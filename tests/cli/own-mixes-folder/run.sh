# The user's own folder is found without an option, after the one that --mixes names.
mkdir -p data/gaugebox/mixes home/.local/share/gaugebox/mixes
cp "$CASE/yard.cfg" data/gaugebox/mixes
sed 's/rich-bed/home-bed/' "$CASE/yard.cfg" >home/.local/share/gaugebox/mixes/yard.cfg
export XDG_DATA_HOME=$PWD/data HOME=$PWD/home
"$GAUGEBOX" mix yard/rich-bed | sed -n 2p
XDG_DATA_HOME= "$GAUGEBOX" mix yard/home-bed | sed -n 2p
XDG_DATA_HOME=data "$GAUGEBOX" mix yard/home-bed | sed -n 2p
XDG_DATA_HOME=$PWD/none "$GAUGEBOX" mix yard/home-bed 2>&1 | sed -n 1p
env -u HOME -u XDG_DATA_HOME "$GAUGEBOX" mix bed/stiff-1-4 | sed -n 2p
echo "the same id in two of the user's files:"
mkdir mine
cp "$CASE/yard.cfg" mine
"$GAUGEBOX" mix yard/rich-bed --mixes mine 2>&1 | sed "s,$PWD/,,"
"$GAUGEBOX" mix --mixes mine 2>&1 | sed "s,$PWD/,,"
