# A figure that is not on the sheet: those that are get named, and nothing is written.
cp "$EXAMPLES"/library-entrance/job.cfg .
"$GAUGEBOX" takeoff job.cfg --explain=colour -o out.txt
echo "exit $?"
ls
