#!/usr/bin/env bash
# Moist air against npm's psychrolib, a general-purpose library after the same handbook.
# Where CI is set it must run; elsewhere it is left out, with its reason, without Node.
set -euo pipefail
print_air=$1
here=$(cd "$(dirname "$0")" && pwd)
for tool in node npm; do
    if ! command -v "$tool" >/dev/null; then
        echo "psychrolib: not compared, $tool is not installed"
        [ "${CI:-}" = "" ] && exit 0
        exit 1
    fi
done
# Beside the program, so that it is fetched once.
folder=$(dirname "$print_air")/psychrolib
if ! [ -f "$folder/node_modules/psychrolib/package.json" ]; then
    mkdir -p "$folder"
    fetched=no
    for _ in 1 2 3; do
        npm install --prefix "$folder" --no-audit --no-fund --loglevel=error \
            psychrolib@1.1.1 >"$folder/npm.log" 2>&1 && fetched=yes && break
        sleep 3
    done
    [ "$fetched" = yes ] || {
        echo "psychrolib: cannot be fetched"
        [ "${CI:-}" = "" ] && exit 0
        cat "$folder/npm.log"
        exit 1
    }
fi
"$print_air" | NODE_PATH=$folder/node_modules node "$here/psychrolib.js"
