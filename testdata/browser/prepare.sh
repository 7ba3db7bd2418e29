#!/bin/sh
# Puts in place what `make test` needs beyond Go, on a Debian machine. It may
# run any number of times and does nothing where nothing is missing. A thing
# that is missing and cannot be put in place is an error, never a skipped test.
set -eu
cd "$(dirname "$0")"

have() { command -v "$1" >/dev/null 2>&1; }

die() {
	echo "prepare: $*" >&2
	exit 1
}

# The Debian packages behind the missing programs: the browser (its headless
# shell, which lib/chromium.mjs prefers), the reference for units, the HTML
# checker's runtime, the reader of printed pages.
missing=
[ -n "${COURSEBOOK_CHROMIUM:-}" ] || have chromium-headless-shell || have chromium || missing="$missing chromium-headless-shell"
have units || missing="$missing units"
have java || missing="$missing default-jre-headless"
have pdfinfo && have pdftotext || missing="$missing poppler-utils"
have node || missing="$missing nodejs"
have npm || missing="$missing npm"

if [ -n "$missing" ]; then
	have apt-get || die "these Debian packages are missing, and there is no apt-get to install them:$missing"
	[ "$(id -u)" -eq 0 ] || die "these Debian packages are missing; install them as root: apt-get install --no-install-recommends$missing"
	echo "prepare: installing$missing"
	export DEBIAN_FRONTEND=noninteractive
	apt-get update -qq
	# shellcheck disable=SC2086 # a list of names
	apt-get install -y -qq --no-install-recommends $missing
fi

have "${GO:-go}" || die "Go is missing; DEVELOPERS.md says which version"
[ -z "${COURSEBOOK_CHROMIUM:-}" ] || [ -x "$COURSEBOOK_CHROMIUM" ] || die "COURSEBOOK_CHROMIUM names no program: $COURSEBOOK_CHROMIUM"

node -e 'process.exit(Number(process.versions.node.split(".")[0]) >= 20 ? 0 : 1)' ||
	die "Node 20 or later is needed, this is $(node --version)"

# npm writes .package-lock.json when it has installed everything.
mark=node_modules/.package-lock.json
if [ ! -e "$mark" ] || [ package-lock.json -nt "$mark" ] || [ package.json -nt "$mark" ]; then
	npm ci --silent
	touch "$mark"
fi
for module in playwright-core axe-core typescript vnu-jar; do
	[ -e "node_modules/$module/package.json" ] || die "npm ci did not bring $module"
done
