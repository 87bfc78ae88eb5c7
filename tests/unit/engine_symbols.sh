#!/usr/bin/env bash
# The engine is pure: what its archive asks of the outside must be on this short list, or
# be defined by the engine itself. No file, clock, locale, environment or malloc. As gcc
# builds the program it loads no libm: every sheet would pay for that. (clang calls libm
# for what gcc writes out, such as round.)
set -euo pipefail
archive=$1
program=$2
compiler=$3
allowed='ceil|floor|fmax|fmin|llround|round|sqrt|memcpy|memmove|memset|strchr|strcmp|strlen|strncmp|strpbrk|strspn|strstr|__stack_chk_fail|_GLOBAL_OFFSET_TABLE_'
defined=$(nm --defined-only "$archive" | awk 'NF == 3 { print $3 }' | sort -u)
[ -n "$defined" ] || { echo "no symbols in $archive"; exit 1; }
foreign=$(nm --undefined-only "$archive" | awk 'NF == 2 { print $2 }' | sort -u |
    grep -vxF "$defined" | grep -vxE "$allowed" || true)
if [ -n "$foreign" ]; then
    echo "the engine asks for what it must not know:"
    echo "$foreign"
    exit 1
fi
if [ "$compiler" != GNU ]; then
    echo "engine symbols: all on the list; libm is not looked for with $compiler"
    exit 0
fi
loaded=$(readelf -d "$program")
case $loaded in
*libconfig.so*libm.so* | *libm.so*libconfig.so*)
    echo "the program loads libm for one of:"
    nm -D --undefined-only "$program"
    exit 1
    ;;
*libconfig.so*) ;;
*)
    echo "what the program loads cannot be read"
    exit 1
    ;;
esac
echo "engine symbols: all on the list, no libm"
