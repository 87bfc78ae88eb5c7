for command in sheet takeoff price steps mix check keys; do
    echo "== $command"
    "$GAUGEBOX" "$command" --help >help.txt 2>err.txt
    echo "exit $?, $(wc -c <err.txt) bytes of faults"
    sed "s/ *$//" help.txt
done
