// What a fitting looks like stretched or turned, as far as can be told without asking.

import { boundsOf, join, type Point, type Prism } from "./geometry";
import type { Axis, Corner, Hold, KitFitting } from "./kit";

export type FaceName = "front" | "rear" | "left" | "right" | "bottom" | "top";

/** A face that was moved [mm, plus rearwards, to the right, up], and the face of another it was laid against. */
export interface Pull {
	readonly face: FaceName;
	readonly by: number;
	readonly to?: string;
}

export const axes: readonly Axis[] = ["x", "y", "z"];

export const faces: Readonly<Record<Axis, readonly [low: FaceName, high: FaceName]>> = { x: ["front", "rear"], y: ["left", "right"], z: ["bottom", "top"] };

export const axisOf = (face: FaceName): Axis => axes.find((a) => faces[a].includes(face))!;

export const isHigh = (face: FaceName): boolean => faces[axisOf(face)][1] === face;

/** Why a face does not stretch; nothing where it does. */
export const whyFixed = (f: KitFitting, face: FaceName): string | undefined => f.fixed?.[""] ?? f.fixed?.[face];

export const holdOf = (f: KitFitting, axis: Axis): Hold => f.holds[axes.indexOf(axis)]!;

/** How far a face may be moved at most, so that no less is left than can be taken hold of. */
export function limited(f: KitFitting, face: FaceName, by: number, least: number): number {
	const i = axes.indexOf(axisOf(face));
	const spare = Math.max(0, f.max[i]! - f.min[i]! - least) / (f.holds[i] === "middle" ? 2 : 1);
	return isHigh(face) ? Math.max(by, -spare) : Math.min(by, spare);
}

/** The share of a side that a handle at its end may cover: what lies between two of them takes hold of the thing itself. */
const covered = 0.2;

/** How far outside a side's end a handle stands [px], for a side and a handle so long. */
export const outside = (side: number, handle: number): number => Math.max(0, handle / 2 - covered * side);

/** A fitting with faces moved; what is held in its middle grows to both sides. */
export function stretched(f: KitFitting, pulls: readonly Pull[]): KitFitting {
	const min = [...f.min] as [number, number, number];
	const max = [...f.max] as [number, number, number];
	for (const { face, by } of pulls) {
		const i = axes.indexOf(axisOf(face));
		const both = f.holds[i] === "middle";
		if (isHigh(face)) max[i]! += by;
		else min[i]! += by;
		if (both && isHigh(face)) min[i]! -= by;
		else if (both) max[i]! -= by;
	}
	const scaled = (v: number, i: number) => min[i]! + ((v - f.min[i]!) / (f.max[i]! - f.min[i]!)) * (max[i]! - min[i]!);
	const prisms = f.prisms.map((p): Prism => ({
		outline: p.outline.map(([x, y]): Point => [scaled(x, 0), scaled(y, 1)]), low: scaled(p.low, 2), high: scaled(p.high, 2),
	}));
	return { ...f, min, max, prisms };
}

/** A fitting turned by so many degrees, clockwise seen from above; what its place holds on to stays. */
export function turned(f: KitFitting, angle: number): KitFitting {
	const a = (-angle * Math.PI) / 180;
	const [sin, cos] = [Math.sin(a), Math.cos(a)];
	const [cx, cy] = [(f.min[0] + f.max[0]) / 2, (f.min[1] + f.max[1]) / 2];
	const about = ([x, y]: Point): Point => [cx + (x - cx) * cos - (y - cy) * sin, cy + (x - cx) * sin + (y - cy) * cos];
	const round = f.prisms.map((p): Prism => ({ ...p, outline: p.outline.map(about) }));
	const box = join(round.map(boundsOf));
	const by = [0, 1].map((i) => held(f.holds[i]!, f.min[i]!, f.max[i]!, box.min[i]!, box.max[i]!));
	const prisms = round.map((p): Prism => ({ ...p, outline: p.outline.map(([x, y]): Point => [x + by[0]!, y + by[1]!]) }));
	const moved = join(prisms.map(boundsOf));
	return { ...f, min: moved.min as Corner, max: moved.max as Corner, prisms };
}

/** How far a turned outline is to be shifted so that what its place holds on to is where it was. */
function held(hold: Hold, min: number, max: number, low: number, high: number): number {
	if (hold === "low") return min - low;
	if (hold === "high") return max - high;
	return 0;
}

/**
 * Where a handle stands that is so far off one edge of a box: beyond the high edge (1) or the low one (-1), beyond the other where that is
 * off the room, and within the box where both are.
 */
export function offEdge([low, high]: readonly [number, number], side: 1 | -1, far: number, room: readonly [number, number]): { edge: number; at: number } {
	const beyond = (to: 1 | -1) => ({ edge: to > 0 ? high : low, at: to > 0 ? high + far : low - far });
	const fits = ({ at }: { at: number }) => at >= room[0] && at <= room[1];
	const [first, second] = [beyond(side), beyond(side > 0 ? -1 : 1)];
	if (fits(first)) return first;
	return fits(second) ? second : { edge: first.edge, at: first.edge - side * far };
}
