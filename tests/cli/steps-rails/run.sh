# Both sides of what asks for a handrail (4 risers) and for a guard (more than 30 in).
rails() {
    printf '== %s\n' "$*"
    "$GAUGEBOX" steps "$@" | sed -n '/^RAIL/,/^====/p' | sed '$d'
}
rails --rise 21in --count 3 --tread 14in
rails --rise 28in --count 4 --tread 14in
rails --rise 30in --count 5 --tread 14in
rails --rise 30.1in --count 5 --tread 14in
