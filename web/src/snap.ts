// Laying a dragged face against another: of a neighbour, of the room, in line with one, on a rib, or where it came from. Off all of
// these, faces lie on whole centimetres.

import { still, type Bounds, type Shift } from "./geometry";
import type { Axis, KitFitting } from "./kit";
import { middlesFor, ribsFor } from "./lines";
import { axes, axisOf, faces, holdOf, isHigh, limited, stretched, type FaceName, type Pull } from "./shape";
import type { Face, Trial } from "./trial";

/** Positions off every face are whole multiples of this [mm]. */
const grid = 10;

/** Faces in line pull half as far as faces laid against each other, and none beyond this distance [mm]. */
const reach = 600;

/** What was snapped to: laid against it, or only in line with it. rule is what the document may say of it. */
export interface Caught {
	readonly axis: Axis;
	readonly at: number;
	readonly says: string;
	readonly against: boolean;
	readonly rule?: string;
}

export interface Snapped {
	readonly shift: Shift;
	readonly caught: readonly Caught[];
}

const delta = { x: "dx", y: "dy", z: "dz" } as const;

/** What pulls most: the least distance for how far it pulls. Nothing is made for the hundreds that do not. */
class Strongest {
	by = 0;
	at = 0;
	says = "";
	against = false;
	rule: string | undefined;
	strain = 1;

	constructor(readonly wanted: number) {}

	get holds(): boolean {
		return this.strain < 1;
	}

	try(by: number, reaches: number, at = 0, says = "", against = false, rule?: string): void {
		const strain = Math.abs(by - this.wanted) / reaches;
		if (strain >= this.strain) return;
		this.by = by;
		this.at = at;
		this.strain = strain;
		this.says = says;
		this.against = against;
		this.rule = rule;
	}

	caught(axis: Axis): Caught | undefined {
		if (!this.holds || !this.says) return undefined;
		const { at, says, against } = this;
		return this.rule === undefined ? { axis, at, says, against } : { axis, at, says, against, rule: this.rule };
	}
}

/** Draws a shift to what is within reach along the axes that move; the others stay as they are. */
export function snap(trial: Trial, wanted: Shift, along: readonly Axis[], tolerance: number): Snapped {
	let shift = trial.stopped(wanted);
	const caught: Caught[] = [];
	for (const axis of along) {
		const pull = strongest(trial, axis, shift, tolerance);
		const by = pull.holds ? tenth(pull.by) : onGrid(trial, axis, pull.wanted);
		shift = { ...shift, [delta[axis]]: by };
		const found = pull.caught(axis);
		if (found) caught.push(found);
	}
	return { shift: trial.stopped(shift), caught };
}

/** The face that the place holds on to goes to whole centimetres. */
function onGrid(trial: Trial, axis: Axis, by: number): number {
	const i = axes.indexOf(axis);
	const from = trial.own?.holds[i] === "high" ? trial.box.max[i]! : trial.box.min[i]!;
	return tenth(Math.round((from + by) / grid) * grid - from);
}

function strongest(trial: Trial, axis: Axis, shift: Shift, tolerance: number): Strongest {
	const i = axes.indexOf(axis);
	const { min, max } = trial.box;
	const [lowFace, highFace] = [min[i]!, max[i]!];
	const pull = new Strongest(shift[delta[axis]]);
	pull.try(0, tolerance / 2);
	for (const face of trial.ordered[axis].near([lowFace + pull.wanted, highFace + pull.wanted], tolerance)) {
		const low = face.at - lowFace;
		const high = face.at - highFace;
		const near = nearness(face.of, trial.box, shift, i);
		if (near === 0) continue;
		const touching = near === 1 ? tolerance : tolerance / 2;
		const lowTouches = touchedBy(face) === "min";
		if (lowTouches || face.of) pull.try(low, lowTouches ? touching : tolerance / 2, face.at, face.face, lowTouches && near === 1, ruleOf(trial, face, lowTouches ? "" : "from "));
		if (!lowTouches || face.of) pull.try(high, lowTouches ? tolerance / 2 : touching, face.at, face.face, !lowTouches && near === 1, ruleOf(trial, face, lowTouches ? "to " : ""));
	}
	const middle = (lowFace + highFace) / 2;
	for (const line of middlesFor(trial)[axis].near([middle + pull.wanted], tolerance / 2)) {
		if (nearness(line.of, trial.box, shift, i) === 0) continue;
		pull.try(line.at - middle, tolerance / 2, line.at, line.says, false, line.rule);
	}
	if (axis === "x") for (const rib of ribsFor(trial)) for (const from of [lowFace, middle, highFace]) pull.try(rib.at - from, tolerance / 2, rib.at, rib.says);
	if (axis === "y") for (const to of ["left", "right"] as const) {
		const gap = trial.room.gap(trial.prisms, shift, to);
		if (!Number.isFinite(gap) || trial.where !== "") continue;
		const by = shift.dy + (to === "left" ? -gap : gap);
		pull.try(by, tolerance, (to === "left" ? min[1] : max[1]) + tenth(by), to, true, trial.carried ? undefined : to);
	}
	return pull;
}

/** What the document may say. Upon or in a carrier the room's words mean the carrier's own faces, so they are left out. */
function ruleOf(trial: Trial, face: Face, how: "" | "from " | "to "): string | undefined {
	return trial.own === undefined || (trial.carried && !face.of) ? undefined : how + face.face;
}

/** Which end of a box would lie against a face: behind what is before it, within what is around it. The other is only in line. */
function touchedBy(face: Face): "min" | "max" {
	const name = face.face.slice(face.face.lastIndexOf(".") + 1);
	const high = name === "rear" || name === "right" || name === "top" || name === "roof";
	return high === (face.of !== undefined) ? "min" : "max";
}

// nearness is 1 for a face that the box passes, a half for one beside its way, 0 for one far away.
function nearness(other: KitFitting | undefined, box: Bounds, shift: Shift, axis: number): number {
	if (!other) return 1;
	let apart = 0;
	for (let i = 0; i < 3; i++) {
		if (i === axis) continue;
		const by = i === 0 ? shift.dx : i === 1 ? shift.dy : shift.dz;
		apart = Math.max(apart, other.min[i]! - box.max[i]! - by, box.min[i]! + by - other.max[i]!);
	}
	if (apart <= 0) return 1;
	return apart < reach ? 0.5 : 0;
}

/** Draws one moved face of a fitting to what is within reach; off all of it, the size is whole centimetres. Free, it is whole millimetres. */
export function snapFace(trial: Trial, f: KitFitting, face: FaceName, wanted: number, tolerance: number, free: boolean): { pull: Pull; caught?: Caught } {
	const axis = axisOf(face);
	const i = axes.indexOf(axis);
	const from = (isHigh(face) ? f.max : f.min)[i]!;
	const least = trial.kit.least;
	if (free) return { pull: { face, by: limited(f, face, Math.round(wanted), least) } };
	const strongest = new Strongest(wanted);
	strongest.try(0, tolerance / 2);
	for (const other of trial.faces[axis]) {
		if (Math.abs(other.at - from - wanted) >= tolerance || nearness(other.of, trial.box, still, i) === 0) continue;
		const against = (touchedBy(other) === "min") !== isHigh(face);
		strongest.try(other.at - from, against ? tolerance : tolerance / 2, other.at, other.face, against, holdOf(f, axis) === "ends" ? ruleOf(trial, other, "") : undefined);
	}
	if (axis === "x") for (const rib of ribsFor(trial)) strongest.try(rib.at - from, tolerance / 2, rib.at, rib.says);
	if (axis === "y") sideOf(trial, f, face, wanted, tolerance, from, strongest);
	const by = limited(f, face, strongest.holds ? tenth(strongest.by) : onSizeGrid(f, i, face, wanted), least);
	const caught = by === tenth(strongest.by) ? strongest.caught(axis) : undefined;
	const pull: Pull = caught?.rule === undefined ? { face, by } : { face, by, to: caught.rule };
	return caught ? { pull, caught } : { pull };
}

/** The side of the room, where a face is stretched towards it. */
function sideOf(trial: Trial, f: KitFitting, face: FaceName, wanted: number, tolerance: number, from: number, strongest: Strongest): void {
	const to = face === "left" ? "left" : "right";
	const gap = trial.room.gap(stretched(f, [{ face, by: wanted }]).prisms, still, to);
	if (trial.where !== "" || !Number.isFinite(gap)) return;
	const by = wanted + (to === "left" ? -gap : gap);
	strongest.try(by, tolerance, from + by, to, true, holdOf(f, "y") === "ends" && !trial.carried ? to : undefined);
}

function onSizeGrid(f: KitFitting, i: number, face: FaceName, by: number): number {
	const times = f.holds[i] === "middle" ? 2 : 1;
	const way = isHigh(face) ? 1 : -1;
	const size = f.max[i]! - f.min[i]!;
	return tenth(((Math.round((size + times * way * by) / grid) * grid - size) * way) / times);
}

/** The face of a fitting on an axis, the low one or the high one. */
export const faceOn = (axis: Axis, high: boolean): FaceName => faces[axis][high ? 1 : 0];

const tenth = (v: number): number => Math.round(v * 10) / 10;
