import assert from "node:assert/strict";
import { test } from "node:test";
import { outside } from "../src/shape";

test("the handles at both ends of a side leave its middle free, six tenths of it", () => {
	for (const side of [70, 80, 90, 200, 600]) for (const handle of [24, 36]) {
		const within = handle / 2 - outside(side, handle);
		assert.ok(side - 2 * within >= 0.6 * side - 1e-9, `${handle} on ${side}: ${side - 2 * within} free`);
	}
	assert.equal(outside(600, 36), 0); // on a long side a handle stays where its edge is
});
