import assert from "node:assert/strict";
import { mock, test } from "node:test";
import { Burst, nudgeOf, rest, type Nudge } from "../src/burst";
import { read } from "../src/news";
import { Previews, type Asked } from "../src/preview";
import { Speaker } from "../src/speak";
import { Refused, type Preview } from "../src/wire";

const question = (dx: number): Asked => ({ revision: 1, mode: "day", moves: [{ fitting: "settle", dx, dy: 0, dz: 0, turn: 0, snap: {} }] });
const answer = (sentence: string): Preview => ({ revision: 1, figures: [], appeared: [], cleared: [], sentence, fouls: [] });
const later = () => new Promise<void>((done) => queueMicrotask(() => queueMicrotask(() => queueMicrotask(done))));

test("arrows go 10 mm, with Shift 1, with Alt 100; R turns a quarter, with Shift 15 degrees", () => {
	const all = { dx: 0, dy: 0, dz: 0, turn: 0 };
	assert.deepEqual(nudgeOf("ArrowRight", false, false), { ...all, dx: 10 });
	assert.deepEqual(nudgeOf("ArrowUp", true, false), { ...all, dy: -1 });
	assert.deepEqual(nudgeOf("ArrowDown", false, true), { ...all, dy: 100 });
	assert.deepEqual(nudgeOf("ArrowDown", false, true, -1), { ...all, dy: -100 }); // the plan has the right side up
	assert.deepEqual(nudgeOf("PageUp", false, false), { ...all, dz: 10 });
	assert.deepEqual(nudgeOf("r", false, false), { ...all, turn: 90 });
	assert.deepEqual(nudgeOf("R", true, false), { ...all, turn: 15 });
	assert.deepEqual(nudgeOf("R", false, false), { ...all, turn: 90 }); // with capitals locked
	assert.deepEqual(nudgeOf("r", true, false), { ...all, turn: 15 });
	assert.equal(nudgeOf("Tab", false, false), undefined);
});

/** Runs a test by a clock that only ticks when told to. */
function timed(name: string, run: () => void | Promise<void>): void {
	test(name, async () => {
		mock.timers.enable({ apis: ["setTimeout", "Date"] });
		try {
			await run();
		} finally {
			mock.timers.reset();
		}
	});
}

timed("presses that follow closely are one change, made when the hand rests", () => {
	const done: Nudge[] = [];
	const burst = new Burst((sum) => done.push(sum));
	for (let i = 0; i < 12; i++) {
		burst.add({ dx: 10, dy: 0, dz: 0, turn: 0 });
		mock.timers.tick(rest - 1);
	}
	assert.deepEqual(done, []);
	mock.timers.tick(1);
	assert.deepEqual(done, [{ dx: 120, dy: 0, dz: 0, turn: 0 }]);
	mock.timers.tick(10 * rest);
	assert.equal(done.length, 1);
});

timed("a burst may end early, or be forgotten", () => {
	const done: Nudge[] = [];
	const burst = new Burst((sum) => done.push(sum));
	burst.add({ dx: 10, dy: 0, dz: 0, turn: 0 });
	burst.close();
	burst.add({ dx: 0, dy: 5, dz: 0, turn: 0 });
	burst.drop();
	mock.timers.tick(10 * rest);
	assert.deepEqual(done, [{ dx: 10, dy: 0, dz: 0, turn: 0 }]);
});

timed("previews are asked for at most ten times a second, and the last place is always asked for", () => {
	const asked: number[] = [];
	const previews = new Previews({ answer: () => {}, refused: () => {} }, (q) => {
		asked.push(q.moves[0]!.dx);
		return new Promise(() => {});
	}, Date.now);
	for (let ms = 0; ms < 1000; ms += 10) { // a pointer that moves a hundred times in a second
		previews.want(question(ms));
		mock.timers.tick(10);
	}
	mock.timers.tick(200);
	assert.ok(asked.length >= 9 && asked.length <= 11, `asked ${asked.length} times`);
	assert.equal(asked.at(-1), 990);
});

timed("a question calls off the one before, whose answer is not shown", async () => {
	const open: { signal: AbortSignal; resolve: (p: Preview) => void }[] = [];
	const shown: string[] = [];
	const previews = new Previews({ answer: (p) => shown.push(p.sentence), refused: () => {} }, (_, signal) => new Promise((resolve) => open.push({ signal, resolve })), Date.now);
	previews.want(question(1));
	mock.timers.tick(0);
	previews.want(question(2));
	mock.timers.tick(100);
	assert.equal(open.length, 2);
	assert.equal(open[0]!.signal.aborted, true);
	open[1]!.resolve(answer("second"));
	open[0]!.resolve(answer("first"));
	await later();
	assert.deepEqual(shown, ["second"]);
	previews.want(question(3));
	mock.timers.tick(100);
	previews.stop();
	open[2]!.resolve(answer("third"));
	await later();
	assert.deepEqual(shown, ["second"]);
});

timed("a refused preview is told with its reason", async () => {
	const told: string[] = [];
	const previews = new Previews({ answer: () => {}, refused: (why) => told.push(why.message) }, () => Promise.reject(new Refused(422, "It stands upon the bench.")), Date.now);
	previews.want(question(1));
	mock.timers.tick(0);
	await later();
	assert.deepEqual(told, ["It stands upon the bench."]);
});

timed("at most a sentence a second is spoken, and what was overtaken is not", () => {
	const said: string[] = [];
	const speaker = new Speaker((s) => said.push(s));
	for (const s of ["one", "two", "three", ""]) speaker.speak(s);
	assert.deepEqual(said, ["one"]);
	mock.timers.tick(999);
	assert.deepEqual(said, ["one"]);
	mock.timers.tick(1);
	assert.deepEqual(said, ["one", "three"]);
	mock.timers.tick(5000);
	speaker.speak("four");
	assert.deepEqual(said, ["one", "three", "four"]);
});

test("a bulletin says its revision; anything else is no news", () => {
	assert.deepEqual(read(`{"revision": 214, "stages": ["weight"], "told": 7}`), { revision: 214, stages: ["weight"], run: "", told: 7 });
	assert.deepEqual(read(`{"revision": 3}`), { revision: 3, stages: [], run: "", told: Infinity });
	assert.equal(read("still here"), undefined);
	assert.equal(read(`{"stages": []}`), undefined);
});
