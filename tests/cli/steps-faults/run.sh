# Bad options of a run: each is told with what is allowed, and nothing else is printed.
try() {
    "$GAUGEBOX" steps "$@" >out.txt
    echo "exit $?, $(wc -c <out.txt) bytes"
}
try --rise 49in --count 1 --tread 14in
try --rise 49in --count 0.5 --tread 14in
try --rise 49in --count -7 --tread 14in
try --rise 49in --count 10000 --tread 14in
try --rise 49in --count seven --tread 14in
try --rise 49 --count 7 --tread 14in
try --rise 0in --tread 14in
try --rise=-49in --tread 14in
try --rise naninches --tread 14in
try --rise nan --tread inf
try --rise 1e9in --tread 14in
try --rise 49kg --tread 14in
try --rise "" --tread 14in
try --rise 49in
try --tread 14in
try --rise 49in --tread 14in --length 7ft
try --rise 49in --tread 14in --pitch=-1%
try --rise 49in --tread 14in --pitch 1:47
try --rise 49in --tread 14in --pitch 1/4in
try --rise 49in --tread 14in --slab 2in --course 9in
try --rise 49in --tread 14in --course 4in
try --rise 49in --tread 14in --slab 2in --course 4in --bed 1in
try --rise 49in --count 7 --tread 14in --slab 9in
try --build solid --rise 28in --tread 14in --overlap 2in
try --build solid --rise 28in --tread 14in --stone 7in
try --build solid --rise 28in --tread 14in --stone 7in --overlap 14in
try --build solid --rise 28in --tread 14in --stone 7in --overlap 2in --course 4in --evened
try --build timber --rise 28in --tread 14in
try --rise 49in --tread 14in --overlap 2in
try --rise 49in --tread 14in --top sill
try --rise 49in --tread 14in --sill 1in
try --rise 49in --tread 14in --upper tread --landing 3ft
try --rise 49in --tread 14in --least-bed 2in --most-bed 1in
try --rise 49in --tread 14in --band-least 30in --band-most 20in
try --rise 49in --tread 14in --least-riser 8in --most-riser 5in
try --rise 49in --tread 14in --risers 7
try --rise 20in --count 4 --build solid --stone 7in --overlap 2in --tread 14in
try --rise 49in --count 2 --tread 14in
try --rise $'\033[31m49in' --tread 14in
try --rise 49in --tread 14in --evened --output missing/steps.txt
try --rise 4 --tread 14 --count x --pitch 3
