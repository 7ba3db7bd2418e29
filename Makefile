# coursebook. `make site` needs Go only; `make test` may also use Node and npm,
# and installs what it lacks (see testdata/browser/prepare.sh).

GO ?= go
ADDR ?= 127.0.0.1:8080
FUZZ ?= 3000x

.PHONY: site build test check unit scripts browser fuzz bench dist icons picture clean golden

# build the manual and serve it on this machine
site:
	@echo "Building the manual. The first run compiles the generator and its module, which takes a minute or two."
	@$(GO) run ./generator preview -addr $(ADDR)

# write the manual to dist/site, ready for any static server, with the one-file edition
build:
	$(GO) run ./generator build -out dist/site -pocket dist/pocket.html

# everything: formatting, vet, unit tests, published values, types of the scripts,
# fuzzing, browser; prints at its end what CPU time it took
test:
	@MAKE="$(MAKE)" sh testdata/test.sh prepare check unit scripts fuzz browser

.PHONY: prepare
prepare:
	sh testdata/browser/prepare.sh

check:
	@test -z "$$(gofmt -l calculators generator)" || { gofmt -l calculators generator; echo "gofmt would change the files above"; exit 1; }
	$(GO) vet ./...
	$(GO) run ./generator inspect -strict
	$(GO) run ./generator inspect -questions testdata/questions.tsv
	$(GO) run ./generator inspect -questions testdata/emergencies.tsv
	$(GO) run ./generator inspect -least 90 -questions testdata/judged/learn-en.tsv,testdata/judged/learn-es.tsv
	$(GO) run ./generator inspect -least 86 -questions testdata/judged/heard-en.tsv
	$(GO) run ./generator inspect -least 76 -questions testdata/judged/heard-es.tsv

# the searches held back, whose figures alone are printed and recorded, with the
# commit; at most five runs in all, and no other target may call this one
.PHONY: judged
judged:
	@test -z "$$(git status --porcelain)" || { echo "commit first: the figures are recorded with a commit"; exit 1; }
	$(GO) run ./generator inspect -least 0 -questions testdata/judged/test-en.tsv,testdata/judged/test-es.tsv \
		-record testdata/judged/runs.tsv -commit "$$(git rev-parse --short=12 HEAD)"

unit:
	$(GO) test ./...
	$(GO) test -run TestCatalog -count=1 -v ./calculators/catalog

# each fuzz target runs so many inputs beyond its seeds; counting inputs, not
# seconds, keeps a slow machine from ending a target in the middle of one
fuzz:
	sh testdata/fuzz.sh $(FUZZ)

# the theme's TypeScript, type-checked: the page's scripts and the worker
scripts:
	cd testdata/browser && npm run --silent types

browser:
	cd testdata/browser && npm test --silent

bench:
	sh testdata/bench.sh

# one binary that carries theme, module, words and starter manual in itself
dist:
	$(GO) run ./generator/pack -out generator/internal/parts/pack
	$(GO) build -trimpath -buildvcs=false -tags dist -ldflags='-s -w' -o dist/coursebook ./generator

# the icons for home screens that take no vector image, drawn from the theme's icon.svg
icons: prepare
	cd testdata/browser && node icons.mjs

# the picture of the README: the manual at the size of a phone
picture: prepare
	cd testdata/browser && node picture.mjs

golden:
	$(GO) test ./generator/internal/markdown ./generator/internal/site -update
	$(GO) test ./generator -run 'TestWorkedTables|TestSmallWords$$' -update

clean:
	rm -rf dist generator/internal/parts/pack testdata/browser/node_modules testdata/browser/out
