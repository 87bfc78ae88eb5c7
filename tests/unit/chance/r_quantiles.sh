#!/usr/bin/env bash
# Shares and quantiles against those of R (Debian package r-base-core). Where CI is set it
# must run; elsewhere it is left out, with its reason, without R.
set -euo pipefail
print_chance=$1
here=$(cd "$(dirname "$0")" && pwd)
if ! command -v Rscript >/dev/null; then
    echo "r_quantiles: not compared, Rscript is not installed"
    [ "${CI:-}" = "" ] && exit 0
    exit 1
fi
"$print_chance" | Rscript --vanilla "$here/r_quantiles.R"
