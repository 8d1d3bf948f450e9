// The drag kit: what the server knows of one mode, enough to predict a drag without asking.

import type { Point, Prism } from "./geometry";

export type Axis = "x" | "y" | "z";
export type Corner = readonly [x: number, y: number, z: number];

export interface KitFitting {
	readonly id: string;
	readonly carrier?: string; // the fitting that takes it along
	readonly in?: boolean; // it stands inside its carrier, not upon it
	readonly where?: string; // outside, under, cab; none is the living space
	readonly min: Corner;
	readonly max: Corner;
	readonly prisms: readonly Prism[];
	readonly turn?: number; // degrees, clockwise seen from above
	readonly locked?: boolean;
	readonly holds: readonly [Hold, Hold, Hold]; // what it holds on to along, across and up
	readonly fixed?: Readonly<Record<string, string>>; // why a face does not stretch; "" for all of them
	readonly noTurn?: string; // why it cannot be turned
	readonly scribed?: readonly string[] | null; // faces cut to the surfaces: these stand nowhere out
	readonly opening?: boolean; // it belongs to an opening of the body
	readonly skin?: boolean; // it sits in one and stands out of the skin
	readonly gives?: number; // share of its least size that it may be pressed
	readonly along: readonly [string, string, string]; // whose face its place is told from; its carrier's otherwise
	readonly stops?: Readonly<Partial<Record<Axis, number>>>; // how far it may go towards the surface it stands against [mm, signed]
}

/** The face that stays when a size changes: the low or the high one, the middle, or each end for itself. */
export type Hold = "low" | "high" | "middle" | "ends";

/** A rib or bow of the body: steel that a fixing may meet. */
export interface KitRib {
	readonly id: string;
	readonly x: number;
	readonly half: number;
	readonly on: "left" | "right" | "roof";
}

/** The inside of the living space at one height: along the left side rearwards, back along the right. */
export interface KitSurface {
	readonly height: number;
	readonly outline: readonly Point[];
}

/** The underside of the roof as heights on a grid: along x, then across. */
export interface KitRoof {
	readonly from: Point;
	readonly step: Point;
	readonly heights: readonly (readonly number[])[];
}

/** A flat face that a dragged face may be laid against; its name is the document's. */
export interface Snap {
	readonly axis: Axis;
	readonly at: number;
	readonly face: string; // rear, galley.rear
}

export interface Kit {
	readonly revision: number;
	readonly mode: string;
	readonly fittings: readonly KitFitting[];
	readonly surfaces: readonly KitSurface[] | null;
	readonly snaps: readonly Snap[];
	readonly roof?: KitRoof | null;
	readonly ribs: readonly KitRib[];
	readonly least: number; // mm: stretching makes nothing smaller
	readonly closed?: boolean; // a partition closes the front
	readonly limits: KitLimits;
}

/** The measures by which what stands out of the room is excused [mm]; the server says why. */
export interface KitLimits {
	readonly cutShare: number; // of its size across a face that is cut to the lining, which one cuts off
	readonly cutLeast: number; // and so much in any case
	readonly cabLong: number;
	readonly cabWider: number; // by how much a cab may be wider or higher than the front of the room
	readonly wellInside: number; // what is said to be outside and lies deeper in the room than this is not outside
	readonly shoulder: number; // the height up to which a side is a side, and not yet the roof
}

/** The fittings and all that goes with them, at any depth. */
export function family(kit: Kit, ids: readonly string[]): Set<string> {
	const members = new Set(ids);
	for (let before = 0; before < members.size; ) {
		before = members.size;
		for (const f of kit.fittings) if (f.carrier && members.has(f.carrier)) members.add(f.id);
	}
	return members;
}

const indexes = new WeakMap<Kit, ReadonlyMap<string, KitFitting>>();

/** The fittings of a kit by id. */
export function indexOf(kit: Kit): ReadonlyMap<string, KitFitting> {
	let index = indexes.get(kit);
	if (!index) indexes.set(kit, (index = new Map(kit.fittings.map((f) => [f.id, f]))));
	return index;
}

/** What carries the fitting, nearest first. */
export function carriers(kit: Kit, id: string): KitFitting[] {
	const byId = indexOf(kit);
	const line: KitFitting[] = [];
	for (let f = byId.get(byId.get(id)?.carrier ?? ""); f && !line.includes(f); f = byId.get(f.carrier ?? "")) line.push(f);
	return line;
}

/** Which fitting a face belongs to; none for a face of the room. */
export function ownerOf(snap: Snap): string {
	const dot = snap.face.lastIndexOf(".");
	return dot < 0 ? "" : snap.face.slice(0, dot);
}
