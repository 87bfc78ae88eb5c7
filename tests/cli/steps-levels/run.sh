# The story pole of each way to build, in sixteenths and millimetres: platforms of whole
# courses, riser blocks on the treads below, solid stone; from a benchmark, and as a staff
# reads under a laser.
pole() {
    printf '== %s\n' "$*"
    "$GAUGEBOX" steps "$@" | sed -n '/^Story pole/,/^====/p' | sed '$d'
    "$GAUGEBOX" steps "$@" | sed -n '/^Section/,/^# /p'
}
pole --rise 28in --count 4 --tread 14in --slab 2in --course 4in --footing 6in --base 8in
pole --build treads --rise 27in --count 4 --tread 14in --slab 2in --course 4in --overlap 4in --overhang 1in
pole --build solid --stone 7in --rise 27in --count 4 --tread 15in --overlap 2in --pitch 1/8in/ft --base 8in --bench 12in --laser 5ft
pole --rise 36in --top sill --sill 1in --landing 4ft --count 5 --tread 13in --pitch 1/4in/ft --slab 2in --bed 1in
