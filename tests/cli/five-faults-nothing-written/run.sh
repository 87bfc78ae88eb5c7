cp "$CASE/job.cfg" .
for command in sheet takeoff price; do
    echo "== $command"
    "$GAUGEBOX" "$command" job.cfg -o out.txt >printed.txt
    echo "exit $?, $(wc -c <printed.txt) bytes printed"
done
ls
