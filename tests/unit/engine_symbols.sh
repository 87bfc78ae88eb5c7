#!/usr/bin/env bash
# The engine is pure: what its archive asks of the outside must be on this short list, or
# be defined by the engine itself. No file, clock, locale, environment or malloc.
set -euo pipefail
archive=$1
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
echo "engine symbols: all on the list"
