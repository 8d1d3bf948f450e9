// Laying a dragged face against another: of a neighbour, of the room, or where it came from.

import type { Bounds, Shift } from "./geometry";
import type { Axis } from "./kit";
import type { Face, Trial } from "./trial";

/** Positions off every face are whole multiples of this [mm], as the pages round. */
const step = 5;

/** Faces in line pull half as far as faces laid against each other, and none beyond this distance [mm]. */
const reach = 600;

/** A face that was snapped to: laid against it, or only in line with it. */
export interface Caught {
	readonly axis: Axis;
	readonly at: number;
	readonly face: string;
	readonly against: boolean;
}

export interface Snapped {
	readonly shift: Shift;
	readonly caught: readonly Caught[];
}

const indexOf = { x: 0, y: 1, z: 2 } as const;
const delta = { x: "dx", y: "dy", z: "dz" } as const;

/** The face that pulls most: the least distance for how far it pulls. Nothing is made for the hundreds that do not. */
class Pull {
	by = 0;
	face: Face | undefined;
	against = false;
	strain = 1;

	constructor(readonly wanted: number) {}

	get holds(): boolean {
		return this.strain < 1;
	}

	try(by: number, reaches: number, face?: Face, against = false): void {
		const strain = Math.abs(by - this.wanted) / reaches;
		if (strain >= this.strain) return;
		this.by = by;
		this.strain = strain;
		this.face = face;
		this.against = against;
	}
}

/** Draws a shift to the faces within reach along the axes that move; the others stay as they are. */
export function snap(trial: Trial, wanted: Shift, axes: readonly Axis[], tolerance: number): Snapped {
	let shift = wanted;
	const caught: Caught[] = [];
	for (const axis of axes) {
		const pull = strongest(trial, axis, shift, tolerance);
		const by = pull.holds ? tenth(pull.by) : Math.round(pull.wanted / step) * step;
		shift = { ...shift, [delta[axis]]: by };
		if (pull.holds && pull.face) caught.push({ axis, at: pull.face.at, face: pull.face.face, against: pull.against });
	}
	return { shift, caught };
}

function strongest(trial: Trial, axis: Axis, shift: Shift, tolerance: number): Pull {
	const i = indexOf[axis];
	const { min, max } = trial.box;
	const pull = new Pull(shift[delta[axis]]);
	pull.try(0, tolerance / 2);
	for (const face of trial.faces[axis]) {
		const low = face.at - min[i]!;
		const high = face.at - max[i]!;
		if (Math.abs(low - pull.wanted) >= tolerance && Math.abs(high - pull.wanted) >= tolerance) continue;
		const near = nearness(face, trial.box, shift, i);
		if (near === 0) continue;
		const touching = near === 1 ? tolerance : tolerance / 2;
		const lowTouches = touchedBy(face) === "min";
		if (lowTouches || face.of) pull.try(low, lowTouches ? touching : tolerance / 2, face, lowTouches && near === 1);
		if (!lowTouches || face.of) pull.try(high, lowTouches ? tolerance / 2 : touching, face, !lowTouches && near === 1);
	}
	if (axis === "y") for (const to of ["left", "right"] as const) {
		const gap = trial.room.gap(trial.prisms, shift, to);
		if (!Number.isFinite(gap)) continue;
		const by = shift.dy + (to === "left" ? -gap : gap);
		pull.try(by, tolerance, { axis, at: (to === "left" ? min[1] : max[1]) + tenth(by), face: to }, true);
	}
	return pull;
}

/** Which end of a box would lie against a face: behind what is before it, within what is around it. The other is only in line. */
function touchedBy(face: Face): "min" | "max" {
	const name = face.face.slice(face.face.lastIndexOf(".") + 1);
	const high = name === "rear" || name === "right" || name === "top" || name === "roof";
	return high === (face.of !== undefined) ? "min" : "max";
}

// nearness is 1 for a face that the box passes, a half for one beside its way, 0 for one far away.
function nearness(face: Face, box: Bounds, shift: Shift, axis: number): number {
	const other = face.of;
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

const tenth = (v: number): number => Math.round(v * 10) / 10;
