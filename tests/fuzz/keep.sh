#!/usr/bin/env bash
# keep.sh BUILD_FOLDER: after run.sh, renews tests/fuzz/corpus: of the corpora and of what
# was found, the fewest small files that reach code which the project's own files do not.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
cd "$1"

# Files of up to 4 KB without findings; none may hold a path of the machine.
candidates() { # TARGET
    local folder
    rm -rf "candidates/$1"
    mkdir -p "candidates/$1" "$here/corpus/$1"
    for folder in "found/$1" "$here/corpus/$1"; do
        find "$folder" -type f -size -4097c ! -name '*-*' \
            -exec cp -t "candidates/$1" {} +
    done
    grep -rlaE '/(dev|etc|home|proc|root|tmp|usr|var)\b' "candidates/$1" |
        xargs -r rm || true
}

# Edges count, not how often each was run: that would keep three times the files.
keep() { # TARGET
    local file
    rm -rf "kept/$1"
    mkdir -p kept
    cp -r "seeds/$1" "kept/$1"
    candidates "$1"
    "bin/fuzz_$1" -set_cover_merge=1 -use_counters=0 -timeout=5 -max_len=8192 "kept/$1" \
        "candidates/$1" >"keep-$1.log" 2>&1
    rm -f "$here/corpus/$1"/*
    for file in "kept/$1"/*; do
        [ -e "seeds/$1/$(basename "$file")" ] || cp "$file" "$here/corpus/$1/"
    done
    echo "corpus $1: $(find "$here/corpus/$1" -type f | wc -l) files," \
        "$(cat "$here/corpus/$1"/* | wc -c) bytes"
}

for target in quantity job mix price hours log; do
    keep "$target"
done
