# Wrong usage: each is told, and the status is 2, but for faults of a mix that is named.
try() {
    echo "-- $*"
    "$GAUGEBOX" concrete "$@" 2>&1 | grep -v "^Try\|^information"
    echo "status ${PIPESTATUS[0]}"
}
try
try proportioned/footing --slump 3in
try proportioned/footing proportioned/steps-air
try bed/stiff-1-4
try proportioned/foot
try --strength "3000 psi" --strength "3500 psi"
try --strength "3000 psi" --waste 5%
try --strength "3000 psi" --prices none.cfg
try --strength "3000 psi" --make 8ft3
try --strength "3000 psi" --make 8ft3 --mixer 4ft3 --waste 120%
try --strength "3000 psi" --make 8ft3 --mixer 4ft3 --prices none.cfg
try --strength "3000 psi" --mixer 0L
try --strength "3000 psi" --bucket 5m3
try --strength "3000 psi" --format csv
