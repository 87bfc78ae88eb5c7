"$GAUGEBOX" mix bagged/setting-80lb --explain=coverage | sed -n -E "s/(mixes\/[a-z]+.cfg):[0-9]+/\1:--/; 1,20p"
"$GAUGEBOX" mix pointing/1-3 --units metric --explain=COVER_JOINT.length | sed -E "s/(mixes\/[a-z]+.cfg):[0-9]+/\1:--/"
"$GAUGEBOX" mix bagged/setting-80lb --explain=WATER_TO_BLEND | sed -E "s/(mixes\/[a-z]+.cfg):[0-9]+/\1:--/"
