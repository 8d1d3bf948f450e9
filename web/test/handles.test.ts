import assert from "node:assert/strict";
import { test } from "node:test";
import { offEdge, outside } from "../src/shape";

test("the handles at both ends of a side leave its middle free, six tenths of it", () => {
	for (const side of [70, 80, 90, 200, 600]) for (const handle of [24, 36]) {
		const within = handle / 2 - outside(side, handle);
		assert.ok(side - 2 * within >= 0.6 * side - 1e-9, `${handle} on ${side}: ${side - 2 * within} free`);
	}
	assert.equal(outside(600, 36), 0); // on a long side a handle stays where its edge is
});

test("the handle that turns stays on the sheet: on the other side of a box at its edge, and within one that fills it", () => {
	const room = [0, 100] as const;
	assert.deepEqual(offEdge([10, 40], 1, 20, room), { edge: 40, at: 60 });
	assert.deepEqual(offEdge([60, 90], -1, 20, room), { edge: 60, at: 40 });
	assert.deepEqual(offEdge([15, 90], -1, 20, room), { edge: 15, at: 35 }); // neither side has room: within
	assert.deepEqual(offEdge([10, 60], -1, 20, room), { edge: 60, at: 80 }); // off the top: below
	assert.deepEqual(offEdge([30, 95], 1, 20, room), { edge: 30, at: 10 });
});
