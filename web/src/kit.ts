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
	readonly ribs: readonly KitRib[];
	readonly least: number; // mm: stretching makes nothing smaller
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

/** What carries the fitting, nearest first. */
export function carriers(kit: Kit, id: string): KitFitting[] {
	const byId = new Map(kit.fittings.map((f) => [f.id, f]));
	const line: KitFitting[] = [];
	for (let f = byId.get(byId.get(id)?.carrier ?? ""); f && !line.includes(f); f = byId.get(f.carrier ?? "")) line.push(f);
	return line;
}

/** Which fitting a face belongs to; none for a face of the room. */
export function ownerOf(snap: Snap): string {
	const dot = snap.face.lastIndexOf(".");
	return dot < 0 ? "" : snap.face.slice(0, dot);
}
