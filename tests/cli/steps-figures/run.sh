# The figures that were asked for: 49 in in seven at 1/4 in/ft on 14 in, equal and evened;
# the same found by a search, and by the length of the ground.
"$GAUGEBOX" steps --rise 49in --count 7 --tread 14in --pitch 1/4in/ft
"$GAUGEBOX" steps --rise 49in --tread 14in --pitch 1/4in/ft | sed -n '9,40p'
"$GAUGEBOX" steps --rise 49in --length 7ft --pitch 1/4in/ft --least-riser 6in | sed -n '9,30p'
"$GAUGEBOX" steps --rise 49in --count 7 --tread 14in --pitch 1/4in/ft --evened | grep -A12 '^FACES'
