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

const indexOf: Record<Axis, 0 | 1 | 2> = { x: 0, y: 1, z: 2 };

interface Pull {
	by: number;
	strain: number; // distance over how far this face pulls: the least wins
	caught?: Caught;
}

/** Draws a shift to the faces within reach along the axes that move; the others stay as they are. */
export function snap(trial: Trial, wanted: Shift, axes: readonly Axis[], tolerance: number): Snapped {
	const by = [wanted.dx, wanted.dy, wanted.dz];
	const caught: Caught[] = [];
	for (const axis of axes) {
		const shift = { dx: by[0]!, dy: by[1]!, dz: by[2]! };
		const best = pulls(trial, axis, shift, tolerance).reduce<Pull | undefined>((a, b) => (a && a.strain <= b.strain ? a : b), undefined);
		by[indexOf[axis]] = best ? best.by : Math.round(by[indexOf[axis]]! / step) * step;
		if (best?.caught) caught.push(best.caught);
	}
	return { shift: { dx: by[0]!, dy: by[1]!, dz: by[2]! }, caught };
}

function pulls(trial: Trial, axis: Axis, shift: Shift, tolerance: number): Pull[] {
	const i = indexOf[axis];
	const wanted = [shift.dx, shift.dy, shift.dz][i]!;
	const found: Pull[] = [];
	const add = (by: number, reaches: number, caught?: Caught) => {
		const strain = Math.abs(by - wanted) / reaches;
		if (strain <= 1) found.push(caught ? { by, strain, caught } : { by, strain });
	};
	add(0, tolerance / 2);
	for (const face of trial.faces[axis]) {
		const near = nearness(face, trial.box, shift, i);
		for (const end of ["min", "max"] as const) {
			const against = touches(face, end);
			if (near === 0 || (!against && !face.of)) continue; // nothing stands beyond the room's faces
			const whole = against && near === 1;
			add(tenth(face.at - trial.box[end][i]!), whole ? tolerance : tolerance / 2, { axis, at: face.at, face: face.face, against: whole });
		}
	}
	if (axis === "y") for (const to of ["left", "right"] as const) {
		const gap = trial.room.gap(trial.prisms, shift, to);
		const by = tenth(shift.dy + (to === "left" ? -gap : gap));
		const end = to === "left" ? trial.box.min[1] : trial.box.max[1];
		if (Number.isFinite(gap)) add(by, tolerance, { axis, at: end + by, face: to, against: true });
	}
	return found;
}

/** Whether an end of a box would lie against a face, not in line with it: behind what is before it, within what is around it. */
function touches(face: Face, end: "min" | "max"): boolean {
	const name = face.face.slice(face.face.lastIndexOf(".") + 1);
	const high = name === "rear" || name === "right" || name === "top" || name === "roof";
	return high === (face.of ? end === "min" : end === "max");
}

// nearness is 1 for a face that the box passes, a half for one beside its way, 0 for one far away.
function nearness(face: Face, box: Bounds, shift: Shift, axis: number): number {
	const other = face.of;
	if (!other) return 1;
	const by = [shift.dx, shift.dy, shift.dz];
	let apart = 0;
	for (let i = 0; i < 3; i++) {
		if (i === axis) continue;
		apart = Math.max(apart, other.min[i]! - box.max[i]! - by[i]!, box.min[i]! + by[i]! - other.max[i]!);
	}
	if (apart <= 0) return 1;
	return apart < reach ? 0.5 : 0;
}

const tenth = (v: number): number => Math.round(v * 10) / 10;
