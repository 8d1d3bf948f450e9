import assert from "node:assert/strict";
import { test } from "node:test";
import { bedsFirst, next } from "../src/pile";

const lying: Readonly<Record<string, string>> = { cushion: "bench", pillow: "cushion" };
const bed = (id: string) => lying[id];

test("a press on a cushion means the bench first, whether the bench is seen there or not", () => {
	assert.deepEqual(bedsFirst(["cushion", "bench"], bed), ["bench", "cushion"]);
	assert.deepEqual(bedsFirst(["cushion"], bed), ["bench", "cushion"]);
	assert.deepEqual(bedsFirst(["pillow", "cushion", "bench", "box"], bed), ["bench", "cushion", "pillow", "box"]);
});

test("what lies on nothing keeps its order, the topmost first", () => {
	assert.deepEqual(bedsFirst(["table", "cushion", "galley"], bed), ["table", "bench", "cushion", "galley"]);
	assert.deepEqual(bedsFirst([], bed), []);
});

test("things that are said to lie on each other end somewhere", () => {
	assert.deepEqual(bedsFirst(["a"], (id) => (id === "a" ? "b" : "a")), ["b", "a"]);
});

test("a second press in one place means the cushion, a third the bench again", () => {
	const pile = bedsFirst(["cushion"], bed);
	assert.equal(next(pile, "bench", undefined), "cushion");
	assert.equal(next(pile, "cushion", undefined), "bench");
});

test("a press on a printed name means the thing of that name, and on its own name what lies below or upon it", () => {
	assert.equal(next(["bench", "cushion", "box"], "cushion", "bench"), "bench");
	assert.equal(next(["bench", "cushion", "box"], "bench", "bench"), "cushion");
});
