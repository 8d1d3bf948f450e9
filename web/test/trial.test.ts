import assert from "node:assert/strict";
import { test } from "node:test";
import type { Shift } from "../src/geometry";
import { carriers, family, type Kit, type KitFitting } from "../src/kit";
import { Room } from "../src/room";
import { between, linedUp, spacedOut } from "../src/arrange";
import { gapsOf, moved } from "../src/gaps";
import { Ordered } from "../src/ordered";
import { stretched, turned } from "../src/shape";
import { snap, snapFace } from "../src/snap";
import { Trial } from "../src/trial";

type Corners = [number, number, number, number, number, number];

const fitting = (id: string, [x0, x1, y0, y1, z0, z1]: Corners, more: Partial<KitFitting> = {}): KitFitting => ({
	id, min: [x0, y0, z0], max: [x1, y1, z1],
	prisms: [{ outline: [[x0, y0], [x1, y0], [x1, y1], [x0, y1]], low: z0, high: z1 }], holds: ["low", "low", "low"], along: ["", "", ""], ...more,
});

// A room 3 m long and 1.8 m wide, narrowing to 1.4 m at its last height; a bench with a cushion on it and a battery in it; a galley.
const slice = (height: number, half: number) => ({ height, outline: [[0, -half], [3000, -half], [3000, half], [0, half]] as const });

const kit: Kit = {
	revision: 7, mode: "day",
	fittings: [
		fitting("battery", [1100, 1400, 500, 700, 40, 240], { carrier: "bench", in: true }),
		fitting("bench", [1000, 2000, 400, 880, 0, 450]),
		fitting("cushion", [1000, 2000, 400, 880, 450, 550], { carrier: "bench" }),
		fitting("galley", [200, 900, 400, 880, 0, 900]),
		fitting("panel", [0, 1500, -400, 400, 1800, 1840], { where: "outside" }),
		fitting("pillow", [1000, 1400, 500, 800, 540, 600], { carrier: "cushion" }),
	],
	surfaces: [slice(0, 900), slice(150, 900), slice(300, 900), slice(900, 900), slice(1500, 700)],
	snaps: [
		{ axis: "x", at: 0, face: "front" }, { axis: "x", at: 3000, face: "rear" }, { axis: "z", at: 0, face: "floor" },
		{ axis: "x", at: 200, face: "galley.front" }, { axis: "x", at: 900, face: "galley.rear" },
		{ axis: "y", at: 400, face: "galley.left" }, { axis: "z", at: 900, face: "galley.top" },
		{ axis: "x", at: 1000, face: "bench.front" }, { axis: "x", at: 2000, face: "bench.rear" },
	],
	ribs: [{ id: "r2", x: 2600, half: 25, on: "right" }, { id: "b1", x: 1230, half: 30, on: "roof" }],
	least: 50, limits: { cutShare: 0.5, cutLeast: 250, cabLong: 1000, cabWider: 100, wellInside: 50, shoulder: 1350 },
};

const by = (dx: number, dy = 0, dz = 0): Shift => ({ dx, dy, dz });

test("what a fitting carries goes with it, at any depth", () => {
	assert.deepEqual([...family(kit, ["bench"])].sort(), ["battery", "bench", "cushion", "pillow"]);
	assert.deepEqual(carriers(kit, "pillow").map((f) => f.id), ["cushion", "bench"]);
});

test("a drag leads no farther than a metre out of the van, wherever the hand goes", () => {
	const galley = new Trial(kit, "galley"); // 200..900 along, 400..880 across, in a room of 0..3000 by -900..900
	assert.deepEqual(galley.leashed(by(-5000, 5000, 5000)), by(-1200, 1020, 1600));
	assert.deepEqual(galley.leashed(by(300, -200, 10)), by(300, -200, 10));
	const far: Kit = { ...kit, fittings: [fitting("crate", [6000, 6500, 0, 300, 0, 300])] };
	assert.deepEqual(new Trial(far, "crate").leashed(by(200)), by(0));
	assert.deepEqual(new Trial(far, "crate").leashed(by(-300)), by(-2800)); // as from the end of the sheet, 4000
	assert.deepEqual(new Trial(far, "crate").leashed(by(-9000)), by(-7000));
});

test("a ring of carriers ends", () => {
	const ring: Kit = { ...kit, fittings: [fitting("a", [0, 1, 0, 1, 0, 1], { carrier: "b" }), fitting("b", [0, 1, 0, 1, 0, 1], { carrier: "a" })] };
	assert.deepEqual([...family(ring, ["a"])], ["a", "b"]);
	assert.deepEqual(carriers(ring, "a").map((f) => f.id), ["b", "a"]);
});

test("a bench pushed into the galley fouls it; beside it, it does not", () => {
	const trial = new Trial(kit, "bench");
	assert.deepEqual(trial.at(by(-150)), { fouled: ["galley"], outside: false });
	assert.deepEqual(trial.at(by(-100)), { fouled: [], outside: false });
	assert.deepEqual(trial.at(by(200)), { fouled: [], outside: false });
});

test("a bench pushed through the side or the rear is outside", () => {
	const trial = new Trial(kit, "bench");
	assert.equal(trial.at(by(0, 100)).outside, true);
	assert.equal(trial.at(by(1100)).outside, true);
	assert.equal(trial.at(by(900)).outside, false);
});

test("what leans out where the room narrows is outside, and what is higher than the roof", () => {
	const trial = new Trial(kit, "galley");
	assert.equal(trial.at(by(0, 0, 400)).outside, true);
	assert.equal(trial.at(by(0, -200, 400)).outside, false);
	assert.equal(trial.at(by(0, -400, 1400)).outside, true);
});

test("an overlap that is there already is no news, a deeper one is", () => {
	const both = { ...kit, fittings: [...kit.fittings, fitting("crate", [1990, 2400, 400, 700, 0, 300])] }; // 10 in the bench
	assert.deepEqual(new Trial(both, "crate").at(by(3)).fouled, []);
	assert.deepEqual(new Trial(both, "crate").at(by(-20)).fouled, ["bench"]);
	assert.deepEqual(new Trial(kit, "pillow").at(by(0, 0, -20)).fouled, []); // what carries a thing is not in its way
});

test("what is told from a moved face goes along, and may run into something itself", () => {
	const shelf = fitting("shelf", [2000, 2900, 400, 700, 0, 300], { along: ["bench", "", ""] });
	const trial = new Trial({ ...kit, fittings: [...kit.fittings, shelf] }, "bench");
	assert.deepEqual(trial.at(by(50)).fouled, []);
	assert.equal(trial.at(by(150)).outside, true);
	assert.deepEqual(trial.along.find((one) => one.id === "shelf")?.share, [1, 0, 0]);
});

test("what stands against a side is not dragged through it, and follows it", () => {
	const high = { ...kit, fittings: kit.fittings.map((f) => (f.id === "galley" ? { ...f, holds: ["low", "high", "low"] as const, stops: { y: 0, z: 0 } } : f)) };
	const leaning = { ...high, surfaces: [0, 600, 1500].map((z) => ({ height: z, outline: [[0, -900], [3000, -700], [3000, 680], [0, 880]] as const })) };
	const trial = new Trial(leaning, "galley");
	assert.deepEqual(trial.stopped(by(0, 60, -30)), by(0, 0, 0));
	assert.equal(trial.stays(by(0), by(0, 10)), true); // a key that leads into the side moves nothing
	assert.equal(trial.stays(by(0, -10), by(0)), false);
	assert.equal(trial.stays(by(0), by(10, 10)), false);
	const moved = trial.settled(by(300));
	assert.ok(Math.abs(moved.dy + 80) < 0.1, `${moved.dy}`); // at x 1200 the side is at 800
});

test("what stands in a host may move in it, not leave it", () => {
	const trial = new Trial(kit, "battery");
	assert.deepEqual(trial.at(by(200)).fouled, []);
	assert.deepEqual(trial.at(by(800)).fouled, ["bench"]);
});

test("what is on the roof meets neither furniture nor surfaces", () => {
	assert.deepEqual(new Trial(kit, "panel").at(by(0, 300)), { fouled: [], outside: false });
});

test("what is said to be outside has no place in the room", () => {
	assert.deepEqual(new Trial(kit, "panel").at(by(0, 300, -1500)), { fouled: [], outside: true });
});

test("the room is linear between its heights", () => {
	const room = new Room(kit.surfaces!, kit.limits);
	assert.equal(room.side(1000, 1200, "right"), 800);
	assert.equal(room.side(1000, 1200, "left"), -800);
	assert.equal(room.gap(new Trial(kit, "bench").prisms, by(0), "right"), 20);
});

test("a bump in the side that no corner meets is seen", () => {
	const bump = { height: 0, outline: [[0, -900], [1500, -900], [3000, -900], [3000, 900], [1500, 600], [0, 900]] as const };
	const room = new Room([bump, { ...bump, height: 600 }], kit.limits);
	const board = { outline: [[1000, 0], [2000, 0], [2000, 650], [1000, 650]] as const, low: 100, high: 500 };
	assert.equal(room.excess(board, by(0)), 50);
});

test("beside a step a side is where it is farther in", () => {
	const outline = [[0, -900], [1000, -900], [1007, -600], [3000, -600], [3000, 900], [1007, 600], [1000, 900], [0, 900]] as const;
	const room = new Room([{ height: 0, outline }, { height: 600, outline }], kit.limits);
	assert.deepEqual([room.side(500, 300, "left"), room.side(1002, 300, "left"), room.side(1002, 300, "right")], [-900, -600, 600]);
});

test("faces within reach catch, others leave whole centimetres", () => {
	const trial = new Trial(kit, "bench");
	const at = (dx: number) => snap(trial, by(dx), ["x"], 15);
	assert.deepEqual(at(-91), { shift: by(-100), caught: [{ axis: "x", at: 900, says: "galley.rear", against: true, rule: "galley.rear" }] });
	assert.deepEqual(at(992), { shift: by(1000), caught: [{ axis: "x", at: 3000, says: "rear", against: true, rule: "rear" }] });
	assert.deepEqual(at(317.2), { shift: by(320), caught: [] });
	assert.deepEqual(at(-794), { shift: by(-800), caught: [{ axis: "x", at: 200, says: "galley.front", against: false, rule: "from galley.front" }] }); // flush
	assert.deepEqual(at(-790), { shift: by(-790), caught: [] });
	assert.deepEqual(at(1995), { shift: by(2000), caught: [] }); // nothing stands beyond the rear
	assert.deepEqual(at(3), { shift: by(0), caught: [] }); // where it came from
});

test("ribs of its own side catch its faces and its middle, bows only what hangs high", () => {
	const at = (dx: number) => snap(new Trial(kit, "bench"), by(dx), ["x"], 15);
	assert.deepEqual(at(597), { shift: by(600), caught: [{ axis: "x", at: 2600, says: "rib r2", against: false }] });
	assert.deepEqual(at(1104), { shift: by(1100), caught: [{ axis: "x", at: 2600, says: "rib r2", against: false }] });
	assert.deepEqual(at(226), { shift: by(230), caught: [] }); // the bow is above it
});

test("the middle of the van catches the middle of what stands by itself", () => {
	assert.deepEqual(snap(new Trial(kit, "bench"), by(600, -636), ["y"], 15).caught, [{ axis: "y", at: 0, says: "middle of the van", against: false, rule: "mid 0" }]);
	assert.deepEqual(snap(new Trial(kit, "cushion"), by(600, -636), ["y"], 15).caught, []);
});

test("several go together: one box about them, and neither is in the other's way", () => {
	const trial = new Trial(kit, ["bench", "galley"]);
	assert.deepEqual([trial.box.min, trial.box.max], [[200, 400, 0], [2000, 880, 900]]);
	assert.deepEqual(trial.at(by(-150)), { fouled: [], outside: false });
	assert.equal(trial.at(by(-350)).outside, true);
});

test("a face is stretched to a neighbour, to a rib, to whole centimetres of size, and no smaller than can be held", () => {
	const trial = new Trial(kit, "bench");
	const pull = (face: "front" | "rear" | "left", by: number, free = false) => snapFace(trial, trial.own!, face, by, 15, free);
	assert.deepEqual(pull("front", -93), { pull: { face: "front", by: -100 }, caught: { axis: "x", at: 900, says: "galley.rear", against: true } });
	assert.deepEqual(pull("rear", 594), { pull: { face: "rear", by: 600 }, caught: { axis: "x", at: 2600, says: "rib r2", against: false } });
	assert.deepEqual(pull("left", -43.3), { pull: { face: "left", by: -40 } });
	assert.deepEqual(pull("left", -43.3, true), { pull: { face: "left", by: -43 } });
	assert.deepEqual(pull("left", 470), { pull: { face: "left", by: 430 } }); // 50 are left
	const ends = { ...kit, fittings: kit.fittings.map((f) => (f.id === "bench" ? { ...f, holds: ["ends", "low", "low"] as const } : f)) };
	const between = new Trial(ends, "bench");
	assert.deepEqual(snapFace(between, between.own!, "front", -93, 15, false).pull, { face: "front", by: -100, to: "galley.rear" });
});

test("stretched and turned shapes are tried as they would be", () => {
	const trial = new Trial(kit, "bench");
	const own = trial.own!;
	assert.deepEqual(trial.at(by(0), stretched(own, [{ face: "front", by: -150 }])).fouled, ["galley"]);
	assert.deepEqual(trial.at(by(0), stretched(own, [{ face: "front", by: -90 }])).fouled, []);
	const quarter = turned(own, 90); // 1000 x 480 becomes 480 x 1000, its low corner stays
	for (const [i, want] of [1000, 400, 0].entries()) assert.ok(Math.abs(quarter.min[i]! - want) < 1e-6, `${quarter.min}`);
	for (const [i, want] of [1480, 1400, 450].entries()) assert.ok(Math.abs(quarter.max[i]! - want) < 1e-6, `${quarter.max}`);
	assert.equal(trial.at(by(0), quarter).outside, true);
	const middle = stretched({ ...own, holds: ["middle", "low", "low"] }, [{ face: "rear", by: 30 }]);
	assert.deepEqual([middle.min[0], middle.max[0]], [970, 2030]);
});

test("gaps are to the next thing on each side, or to the room", () => {
	const trial = new Trial(kit, "bench");
	const gaps = gapsOf(trial, moved(trial.box, by(50)), ["x", "y"]).map((g) => [g.axis, Math.round(g.to - g.from)]);
	assert.deepEqual(gaps, [["x", -150], ["x", 950], ["y", -1300], ["y", 20]]);
});

test("several are lined up by faces and middles, and spaced out evenly", () => {
	const three = [fitting("a", [0, 100, 0, 100, 0, 50]), fitting("b", [150, 350, 20, 60, 0, 50]), fitting("c", [900, 1000, -40, 0, 10, 50])];
	const dy = (m: Map<string, Shift>) => ["a", "b", "c"].map((id) => m.get(id)?.dy);
	assert.deepEqual(dy(linedUp(three, { axis: "y", at: "low" })), [-40, -60, 0]);
	assert.deepEqual(dy(linedUp(three, { axis: "y", at: "middle" })), [-20, -10, 50]);
	assert.deepEqual([...spacedOut(three, "x")].map(([id, s]) => [id, s.dx]), [["a", 0], ["b", 250], ["c", 0]]);
	assert.deepEqual(between(three[0]!, three[2]!), [800, 0, 0]);
	assert.equal(spacedOut(three.slice(1), "x").size, 0);
});

test("what stands in another, and what is narrow, is nothing to stand against", () => {
	const socket = fitting("socket", [500, 540, 300, 350, 400, 480]);
	const faces = (id: string) => [...new Set(new Trial({ ...kit, fittings: [...kit.fittings, socket], snaps: [
		{ axis: "x", at: 540, face: "socket.rear" }, { axis: "x", at: 1400, face: "battery.rear" }, { axis: "x", at: 2000, face: "bench.rear" }, { axis: "x", at: 900, face: "galley.rear" },
	] }, id).faces.x.map((f) => f.face))];
	assert.deepEqual(faces("galley"), ["bench.rear"]);
	assert.deepEqual(faces("cushion"), ["battery.rear", "bench.rear"]); // one is with it on the bench, the other carries it
});

test("the side of the room catches at the place the fitting is dragged to", () => {
	const { shift, caught } = snap(new Trial(kit, "bench"), by(200, 12), ["x", "y"], 15);
	assert.deepEqual(shift, by(200, 20));
	assert.deepEqual(caught, [{ axis: "y", at: 900, says: "right", against: true, rule: "right" }]);
});

test("a van of 200 fittings is tried in well under a frame", () => {
	const many = Array.from({ length: 200 }, (_, i) => fitting(`f${i}`, [i * 10, i * 10 + 300, -400, 400, 0, 800]));
	const trial = new Trial({ ...kit, fittings: many }, "f100");
	let best = Infinity; // of many, since the machine may be busy with something else
	for (let i = 0; i < 100; i++) {
		const start = performance.now();
		trial.at(by(i));
		best = Math.min(best, performance.now() - start);
	}
	assert.ok(best < 2, `${best} ms`);
});

test("on a long way, in small steps or in leaps, the same is in the way as for who comes there at once", () => {
	const trial = new Trial(kit, "bench");
	let fouls = 0;
	for (const dx of [...Array.from({ length: 90 }, (_, i) => -50 - i * 10), 0, -850, 300]) {
		const found = trial.at(by(dx, -dx / 20));
		assert.deepEqual(found, new Trial(kit, "bench").at(by(dx, -dx / 20)), `at ${dx}`);
		fouls += found.fouled.length;
	}
	assert.ok(fouls > 50);
});

test("of places on an axis only the near ones are given, in the order of the kit, each once", () => {
	const all = [900, 10, 20, 905, 10, 400].map((at, id) => ({ at, id }));
	const near = (places: readonly number[], reach: number) => new Ordered(all).near(places, reach).map((one) => one.id);
	assert.deepEqual(near([15, 900], 6), [0, 1, 2, 3, 4]);
	assert.deepEqual(near([15, 20], 5), [2]);
	assert.deepEqual(near([5, 890], 5), []);
	assert.deepEqual(near([2000], 15), []);
});
