# The reference part is of one bag and of one volume, whatever amount is gauged above it.
part() {
    "$GAUGEBOX" mix mortar/type-n "$@" | sed -n '/^For reference/,$p' | cksum
}
one=$(part)
for amount in "--bags 1/2" "--bags 7" "--make 3ft3 --waste 10%" "--area 40ft2 --depth 1in"; do
    # shellcheck disable=SC2086 # words of one amount
    [ "$(part $amount)" = "$one" ] && echo "$amount: the same"
done
# The proportion is one of volumes, so units leave it alone.
"$GAUGEBOX" mix mortar/type-n --units metric | grep -c "$("$GAUGEBOX" mix mortar/type-n | grep PARTS)"
