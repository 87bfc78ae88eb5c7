"$GAUGEBOX" mix bagged/setting-80lb --explain=coverage | sed -n 1,20p
"$GAUGEBOX" mix pointing/1-3 --units metric --explain=COVER_JOINT.length
"$GAUGEBOX" mix bagged/setting-80lb --explain=WATER_TO_BLEND
