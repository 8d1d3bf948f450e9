// Lines in the van that a fitting may be brought in line with, besides the faces: middles of neighbours, the van's own middle, and the
// ribs, so that a fixing meets steel.

import type { Axis, KitFitting, KitRib } from "./kit";
import { Ordered } from "./ordered";
import { axes } from "./shape";
import type { Trial } from "./trial";

export interface Line {
	readonly at: number;
	readonly says: string;
	readonly rule?: string; // the document's words for it
	readonly of?: KitFitting;
}

type Lines = Readonly<Record<Axis, Ordered<Line>>>;

const middles = new WeakMap<Trial, Lines>();
const ribs = new WeakMap<Trial, readonly Line[]>();

/** Lines for the middle of what is moved. */
export function middlesFor(trial: Trial): Lines {
	let known = middles.get(trial);
	if (!known) middles.set(trial, (known = findMiddles(trial)));
	return known;
}

function findMiddles(trial: Trial): Lines {
	const lines: Record<Axis, Line[]> = { x: [], y: [], z: [] };
	axes.forEach((axis, i) => {
		const seen = new Set<string>();
		for (const { of } of trial.faces[axis]) {
			if (!of || seen.has(of.id)) continue;
			seen.add(of.id);
			lines[axis].push({ at: (of.min[i]! + of.max[i]!) / 2, says: `middle of ${of.id.replaceAll("-", " ")}`, of });
		}
	});
	if (!trial.carried && (trial.where === "" || trial.where === "outside")) lines.y.push({ at: 0, says: "middle of the van", rule: "mid 0" });
	return { x: new Ordered(lines.x), y: new Ordered(lines.y), z: new Ordered(lines.z) };
}

/** The ribs beside what is moved: of the side it is nearer to, and of the roof for what hangs high. */
export function ribsFor(trial: Trial): readonly Line[] {
	let known = ribs.get(trial);
	if (!known) ribs.set(trial, (known = findRibs(trial)));
	return known;
}

const wide = 350; // mm from the middle of the van: what reaches farther is fixed to that side
const high = 1300; // mm: what reaches higher may hang from the bows

function findRibs(trial: Trial): Line[] {
	const { min, max } = trial.box;
	const beside = (rib: KitRib) => (rib.on === "left" ? min[1] < -wide : rib.on === "right" ? max[1] > wide : max[2] > high);
	const found = new Map<number, Line>();
	if (trial.where === "") for (const rib of trial.kit.ribs) if (beside(rib)) found.set(rib.x, { at: rib.x, says: `${rib.on === "roof" ? "bow" : "rib"} ${rib.id}` });
	return [...found.values()];
}
