#!/bin/sh
# Makes the targets of `make test` in order, and stops at the first that fails.
# At the end it prints the wall time and the CPU time (user and system) of all
# of them. The limits are our own: 15 minutes of wall time on two idle cores, or
# 22 minutes of CPU time where the machine is shared.
set -u
cd "$(dirname "$0")/.."

start=$(date +%s)
status=0
for target in "$@"; do
	"${MAKE:-make}" --no-print-directory "$target" || { status=$?; break; }
done

# The second line of `times` is the time of all children. It is a builtin: in a
# pipe it would be the time of another process.
report=$(mktemp)
times >"$report"
awk -v wall="$(($(date +%s) - start))" 'NR == 2 {
	for (i = 1; i <= 2; i++) { split($i, part, /[ms]/); cpu += 60 * part[1] + part[2] }
	printf "wall %d min %02d s, user + sys %d min %02d s (limits: 15 min of wall time when idle, or user + sys 22 min)\n",
		wall / 60, wall % 60, cpu / 60, cpu % 60
}' "$report"
rm -f "$report"
[ "$status" -eq 0 ] || echo "make test: $target failed" >&2
exit "$status"
