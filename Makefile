# Tumblehome: the few commands that its makers need.
#
#   make demo     build it and open the demonstration builds
#   make test     everything that must hold, as continuous integration runs it
#   make check    format, vet, lint, generated files, types (part of test)
#   make build    the program, ./tumblehome, with its front end inside
#   make bench    how long things take
#   make proof    every figure beside the outside source that it was checked against
#   make gallery  pictures of every page and drawing
#   make kills    kill 2000 programs while they save, and keep 500 photos: a quarter of an hour
#   make picture  the picture in the readme, made anew

.PHONY: demo test check build bench proof gallery kills picture tools compiler front go race

demo: build
	./tumblehome demo

test:
	@.ci/stages tools check front go race

build: front
	CGO_ENABLED=0 go build -trimpath -ldflags "-s -w" -o tumblehome ./cmd/tumblehome

bench:
	go test -run '^$$' -bench . -benchmem ./...

# The tests write their cases to a folder of their own; the table is printed
# also when a test fails, since it shows which.
proof:
	@folder=$$(mktemp -d) && trap "rm -rf $$folder" EXIT && \
	{ TUMBLEHOME_PROOF=$$folder go test -count=1 ./... >$$folder/tests.log || { cat $$folder/tests.log; failed=1; }; } && \
	go run ./internal/tools/proof $$folder && exit $${failed:-0}

gallery: tools front
	TUMBLEHOME_PICTURES=1 go test -count=1 ./internal/web/...
	@echo "The pictures are in pictures/"

picture: tools front
	TUMBLEHOME_PICTURES=1 go test -count=1 -run 'TestEveryPageIsSoundInABrowser/arrangement_on_a_desk' ./internal/web
	cp pictures/arrangement-desk.png docs/arrangement.png

kills:
	TUMBLEHOME_KILLS=2000 go test -count=1 -v -timeout 60m -run 'Kill|ManyLargePhotos' ./internal/store/

# --- the stages of make test ---

# What a machine with Go, Node and make may still lack. Debian's packages are fetched only by root.
tools: node_modules/.package-lock.json
	@command -v chromium >/dev/null || test "$$(id -u)" != 0 || \
		{ apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium >/dev/null; }
	@command -v chromium || echo "no chromium: browser tests will be skipped, or fail where CI is set"

node_modules/.package-lock.json: package-lock.json
	npm ci --no-fund --no-audit
	@touch $@

check: node_modules/.package-lock.json
	@unformatted=$$(gofmt -l $$(go list -f '{{.Dir}}' ./...)) && test -z "$$unformatted" || { echo "gofmt these: $$unformatted"; exit 1; }
	go vet ./...
	go tool staticcheck ./...
	@before=$$($(GENERATED)) && go tool templ generate && test "$$before" = "$$($(GENERATED))" || \
		{ echo "templ generate changed *_templ.go: commit the new ones"; exit 1; }
	node_modules/.bin/tsc --noEmit -p .

# The digests of all files that templ writes.
GENERATED = find . -name '*_templ.go' -not -path './node_modules/*' | sort | xargs -r sha256sum

front: internal/web/static/main.js

internal/web/static/main.js: $(shell find web internal/tools/bundle -type f) node_modules/.package-lock.json
	go run ./internal/tools/bundle

# The pages come first, since they take longest. Check has vetted everything.
go:
	go test -vet=off -timeout 20m ./internal/web ./...

# Only these two have goroutines of their own that share something; of the pages' tests those in which several do something at once.
race: compiler
	CGO_ENABLED=1 go test -vet=off -race -short -timeout 20m ./internal/store/...
	CGO_ENABLED=1 go test -vet=off -race -short -timeout 20m -run $(AT_ONCE) ./internal/web

AT_ONCE = 'TwoPeople|TwoWindows|NobodyTakes|EditsOf|APreview|News|Serving|Queue|Pictures|ARegion|AnotherProgram|AsLongAs|OnlyBeRead|AnotherHistory'

compiler:
	@command -v gcc >/dev/null || test "$$(id -u)" != 0 || \
		{ apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends gcc libc6-dev >/dev/null; }
