// How far it is from what is moved to the nearest thing on each side: of a neighbour, or of the room.

import type { Bounds, Shift } from "./geometry";
import type { Axis } from "./kit";
import { axes } from "./shape";
import type { Trial } from "./trial";

/** A clear space along an axis, between two places; the other coordinates are where to draw it. */
export interface Gap {
	readonly axis: Axis;
	readonly from: number;
	readonly to: number;
	readonly at: readonly [number, number, number];
}

/** The gaps before and behind a box along some axes; a gap that is none is left out. */
export function gapsOf(trial: Trial, box: Bounds, along: readonly Axis[]): Gap[] {
	const found: Gap[] = [];
	for (const axis of along) {
		const i = axes.indexOf(axis);
		for (const high of [false, true]) {
			const from = (high ? box.max : box.min)[i]!;
			const to = nearest(trial, box, i, high);
			const wide = high ? to - from : from - to;
			if (Number.isFinite(wide) && wide >= 0.5) found.push({ axis, from, to, at: middle(box) });
		}
	}
	return found;
}

/** A box shifted. */
export function moved(box: Bounds, s: Shift): Bounds {
	const by = [s.dx, s.dy, s.dz];
	const shift = (corner: readonly [number, number, number]) => [corner[0] + by[0]!, corner[1] + by[1]!, corner[2] + by[2]!] as const;
	return { min: shift(box.min), max: shift(box.max) };
}

const middle = (b: Bounds): readonly [number, number, number] => [(b.min[0] + b.max[0]) / 2, (b.min[1] + b.max[1]) / 2, (b.min[2] + b.max[2]) / 2];

/** The place of the next thing along an axis. What overlaps the box is not beside it. */
function nearest(trial: Trial, box: Bounds, i: number, high: boolean): number {
	const [j, k] = [(i + 1) % 3, (i + 2) % 3];
	let next = roomFace(trial, box, i, high);
	for (const other of trial.around) {
		if (other.min[j]! >= box.max[j]! || other.max[j]! <= box.min[j]! || other.min[k]! >= box.max[k]! || other.max[k]! <= box.min[k]!) continue;
		if (high && other.min[i]! >= box.max[i]! - 0.5) next = Math.min(next, other.min[i]!);
		if (!high && other.max[i]! <= box.min[i]! + 0.5) next = Math.max(next, other.max[i]!);
	}
	return next;
}

/** Where the room ends: the flat faces by their place, the sides where they are nearest over the height and length of the box. */
function roomFace(trial: Trial, box: Bounds, i: number, high: boolean): number {
	const none = high ? Infinity : -Infinity;
	if (trial.where !== "" || !trial.room.known) return none;
	if (i === 1) {
		const all = [box.min[0], box.max[0]].flatMap((x) => [box.min[2], box.max[2]].map((z) => trial.room.side(x, z, high ? "right" : "left")));
		return high ? Math.min(...all) : Math.max(...all);
	}
	const name = i === 0 ? (high ? "rear" : "front") : high ? "roof" : "floor";
	return trial.faces[i === 0 ? "x" : "z"].find((f) => f.face === name)?.at ?? none;
}
