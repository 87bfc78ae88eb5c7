for kind in job mixes materials prices; do
    echo "== $kind"
    "$GAUGEBOX" keys "$kind" >keys.txt
    echo "exit $?"
    head -n 9 keys.txt
done
"$GAUGEBOX" keys | sed -n 1,3p
