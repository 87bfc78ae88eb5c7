# What would have to change: a longer run, a landing, a buried stone, other block.
changes() {
    printf '== %s\n' "$*"
    "$GAUGEBOX" steps "$@" | sed -n '/^Numbers of risers/,/^[0-9]* risers, /p' | grep -v '^[0-9]* risers,'
}
changes --rise 42in --length 30in --least-riser 5in
changes --rise 13ft4in --tread 12in --least-riser 7in --most-riser 7.5in
changes --build solid --stone 7in --rise 26in --tread 15in --overlap 2in --upper tread
changes --build solid --stone 6in --rise 3ft --tread 15in --overlap 2in --count 5
changes --rise 40in --tread 14in --slab 2in --course 8in --least-riser 6in
changes --rise 42in --tread 14in --face 6in --count 6
changes --rise 6in --tread 14in
changes --rise 9in --tread 14in --least-riser 5in --most-riser 8in
