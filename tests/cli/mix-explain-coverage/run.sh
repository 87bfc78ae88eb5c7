"$GAUGEBOX" mix bagged/setting-80lb --explain=coverage | head -20
"$GAUGEBOX" mix pointing/1-3 --units metric --explain=COVER_JOINT.length
"$GAUGEBOX" mix bagged/setting-80lb --explain=WATER_TO_BLEND
