# Whatever languages there are, English is the first.
for language in zz EN e ../en; do
    "$GAUGEBOX" --lang "$language" mix 2>&1 | sed 's/known are: en.*/known are: en .../'
    echo "exit ${PIPESTATUS[0]}"
done
"$GAUGEBOX" mix --lang
echo "exit $?"
"$GAUGEBOX" --lang en mix --lang=en | sed -n 1,2p
"$GAUGEBOX" --lang en
echo "exit $?"
