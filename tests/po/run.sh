#!/usr/bin/env bash
# gaugebox.pot must be what the sources make of it today, and every translation must keep
# what the program fills in: {figures}, places for printf, and the tabs that part cells.
set -u
top=$(cd "$(dirname "$0")/../.." && pwd)
failed=0
bash "$top/src/po/renew.sh" --print | diff -u "$top/src/po/gaugebox.pot" - || {
    echo "FAILED: src/po/gaugebox.pot is not that of the sources; run src/po/renew.sh"
    failed=1
}
/usr/bin/python3 "$top/tests/po/catalogs.py" "$top/src/po" || failed=1
[ "$failed" = 0 ]
