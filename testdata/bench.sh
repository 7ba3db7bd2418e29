#!/bin/sh
# Prints what a build costs, what the manual weighs, and how long a reader
# waits. Ratios and times are printed, never asserted.
set -eu
cd "$(dirname "$0")/.."
sh testdata/browser/prepare.sh
"${GO:-go}" run ./generator/bench "$@"
cd testdata/browser
node latency.mjs
node felt.mjs
echo "the tasks of a pour day, by a thumb from the home page"
node run.mjs tasks thumb | grep "touches"
