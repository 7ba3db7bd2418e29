#!/bin/sh
# Runs every fuzz target of the project beyond its seeds, for a number of
# inputs or a time:
#   testdata/fuzz.sh 3000x
#   testdata/fuzz.sh 5s
# A target's minimising may add a few seconds; nothing else is unbounded.
set -eu
cd "$(dirname "$0")/.."
go=${GO:-go}
time=${1:-3000x}
case $time in
*[0-9]) time=${time}s ;;
esac

targets=$(grep -rEo --include='*_test.go' '^func Fuzz[A-Za-z0-9_]+' calculators generator | sed 's/:func /:/' | sort)
if [ -z "$targets" ]; then
	echo "fuzz: found no fuzz target; the search for them must be broken" >&2
	exit 1
fi

failed=
for target in $targets; do
	file=${target%%:*}
	name=${target#*:}
	package=./$(dirname "$file")
	if ! "$go" test -run '^$' -fuzz "^$name\$" -fuzztime "$time" -fuzzminimizetime 2s -timeout 5m "$package"; then
		failed="$failed $package.$name"
	fi
done
if [ -n "$failed" ]; then
	echo "fuzz: failed:$failed" >&2
	exit 1
fi
