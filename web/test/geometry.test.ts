import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { overlap, still, type Prism } from "../src/geometry";

interface Pair {
	a: Prism;
	b: Prism;
	overlap: boolean;
	depth: number;
	axis: [number, number, number];
}

// The file of solve/solid, whose answers shapely was asked to confirm (pairs.py beside it). It is rounded to 1e-6.
const pairs = JSON.parse(readFileSync("solve/solid/testdata/pairs.json", "utf8")) as Pair[];
const near = 1.1e-6;

test("the golden pairs overlap as in solve/solid, as deep and along the same axis", () => {
	assert.equal(pairs.length, 500);
	let overlapping = 0;
	for (const [i, pair] of pairs.entries()) {
		const way = overlap(pair.a, pair.b);
		assert.equal(way !== undefined, pair.overlap, `pair ${i}`);
		if (!way) continue;
		overlapping++;
		for (const [got, want] of [[way.depth, pair.depth], [way.x, pair.axis[0]], [way.y, pair.axis[1]], [way.z, pair.axis[2]]] as const) {
			assert.ok(Math.abs(got - want) <= near, `pair ${i}: got ${JSON.stringify(way)}, want ${pair.depth} along ${pair.axis}`);
		}
	}
	assert.ok(overlapping > 150 && overlapping < 350, `${overlapping} of 500 overlap: not a fair sample`);
});

test("a shift gives what shifted outlines would", () => {
	const shift = { dx: 37.5, dy: -81, dz: 22 };
	for (const [i, { a, b }] of pairs.entries()) {
		const moved = { outline: a.outline.map(([x, y]) => [x + 37.5, y - 81] as const), low: a.low + 22, high: a.high + 22 };
		const got = overlap(a, b, shift);
		const want = overlap(moved, b);
		assert.equal(got === undefined, want === undefined, `pair ${i}`);
		if (got && want) assert.ok(Math.abs(got.depth - want.depth) < 1e-9, `pair ${i}: ${got.depth}, want ${want.depth}`);
	}
});

test("gone its way out, a body overlaps no more", () => {
	for (const { a, b } of pairs) {
		const way = overlap(a, b);
		if (!way) continue;
		const after = overlap(a, b, { dx: way.x * way.depth, dy: way.y * way.depth, dz: way.z * way.depth });
		assert.ok(!after || after.depth < 1e-9, `still ${after?.depth} deep`);
	}
});

test("touching is not overlapping, and a body without height overlaps nothing", () => {
	const box = (x: number, low: number, high: number): Prism => ({ outline: [[x, 0], [x + 100, 0], [x + 100, 100], [x, 100]], low, high });
	assert.equal(overlap(box(0, 0, 50), box(100, 0, 50)), undefined);
	assert.equal(overlap(box(0, 0, 50), box(0, 50, 90)), undefined);
	assert.equal(overlap(box(0, 10, 10), box(50, 0, 50), still), undefined);
	const way = overlap(box(0, 0, 50), box(99, 0, 50));
	assert.ok(way && way.x === -1 && way.y === 0 && way.z === 0 && way.depth === 1, JSON.stringify(way));
});
