echo old >sheet.txt
"$GAUGEBOX" takeoff nowhere.cfg -o sheet.txt
cat sheet.txt
"$GAUGEBOX" takeoff "$EXAMPLES/library-entrance/job.cfg" -o sheet.txt
echo "exit $?"
head -n 2 sheet.txt
ls
