for command in sheet day takeoff price log remaining steps mix check keys; do
    echo "== $command"
    "$GAUGEBOX" "$command" --help >help.txt 2>err.txt
    echo "exit $?, $(wc -c <err.txt) bytes of faults"
    sed "s/ *$//" help.txt
done
