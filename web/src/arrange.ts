// Lining up and spacing out several fittings: by how much each is to be shifted.

import type { Shift } from "./geometry";
import { still } from "./geometry";
import type { Axis, KitFitting } from "./kit";
import { axes } from "./shape";

/** A line along an axis that all are brought to: their low faces, high faces or middles. */
export interface Line {
	readonly axis: Axis;
	readonly at: "low" | "middle" | "high";
}

const delta = { x: "dx", y: "dy", z: "dz" } as const;

const shiftOf = (axis: Axis, by: number): Shift => ({ ...still, [delta[axis]]: Math.round(by * 10) / 10 });

/** Brings faces to the outermost of them, middles to the middle of all. */
export function linedUp(all: readonly KitFitting[], { axis, at }: Line): Map<string, Shift> {
	const i = axes.indexOf(axis);
	const low = Math.min(...all.map((f) => f.min[i]!));
	const high = Math.max(...all.map((f) => f.max[i]!));
	const by = (f: KitFitting) => (at === "low" ? low - f.min[i]! : at === "high" ? high - f.max[i]! : (low + high - f.min[i]! - f.max[i]!) / 2);
	return new Map(all.map((f) => [f.id, shiftOf(axis, by(f))]));
}

/** Makes the clear spaces between neighbours alike; the first and the last stay. */
export function spacedOut(all: readonly KitFitting[], axis: Axis): Map<string, Shift> {
	const i = axes.indexOf(axis);
	const row = all.toSorted((a, b) => a.min[i]! + a.max[i]! - b.min[i]! - b.max[i]!);
	const size = (f: KitFitting) => f.max[i]! - f.min[i]!;
	const [first, last] = [row[0], row.at(-1)];
	if (!first || !last || row.length < 3) return new Map();
	const gap = (last.max[i]! - first.min[i]! - row.reduce((sum, f) => sum + size(f), 0)) / (row.length - 1);
	let at = first.min[i]!;
	return new Map(row.map((f) => {
		const by = at - f.min[i]!;
		at += size(f) + gap;
		return [f.id, shiftOf(axis, by)];
	}));
}

/** The clear space between two things along each axis; 0 where they stand beside each other on it. */
export function between(a: KitFitting, b: KitFitting): readonly [x: number, y: number, z: number] {
	const gap = (i: number) => Math.max(0, b.min[i]! - a.max[i]!, a.min[i]! - b.max[i]!);
	return [gap(0), gap(1), gap(2)];
}
