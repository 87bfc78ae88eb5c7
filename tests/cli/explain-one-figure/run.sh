# One figure by its row and name, in both systems; and what an explanation can not be.
cp "$EXAMPLES"/library-entrance/job.cfg .
"$GAUGEBOX" sheet job.cfg --explain=NEED.gross
"$GAUGEBOX" sheet job.cfg --explain=need.gross --units metric | tail -n 12
"$GAUGEBOX" takeoff job.cfg --explain --format csv
echo "exit $?"
"$GAUGEBOX" keys --explain
echo "exit $?"
