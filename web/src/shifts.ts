// Where fittings are drawn, as long as the drawing does not yet know that they were moved: on their way
// now, or dropped and not yet drawn anew.

import { drawing, groupsOf, onSheet, views, type View } from "./drawing";
import { still, type Shift } from "./geometry";

interface Drawn {
	readonly element: SVGGraphicsElement;
	readonly view: View;
}

/** What was dropped and is not yet drawn by the server. */
interface Hold {
	readonly ids: ReadonlySet<string>;
	readonly by: Shift;
	until: number; // the revision that shows it; Infinity while it is not known
}

let holds: Hold[] = [];
let groups = new Map<string, Drawn[]>();

/** Draws fittings shifted from where they were dropped last. */
export function shift(ids: Iterable<string>, by: Shift): void {
	for (const id of ids) {
		const sum = holds.filter((h) => h.ids.has(id)).reduce((a, h) => add(a, h.by), by);
		for (const { element, view } of drawnOf(id)) {
			const [x, y] = onSheet(view, sum);
			if (x === 0 && y === 0) element.removeAttribute("transform");
			else element.setAttribute("transform", `translate(${x.toFixed(3)} ${y.toFixed(3)})`);
		}
	}
}

/** Finds where fittings are drawn before they are shifted. */
export function find(ids: Iterable<string>): void {
	for (const id of ids) drawnOf(id);
}

/** Keeps a shift until the drawing shows it itself. */
export function hold(ids: Iterable<string>, by: Shift): Hold {
	const kept: Hold = { ids: new Set(ids), by, until: Infinity };
	holds.push(kept);
	return kept;
}

/** What was dropped was refused. */
export function release(refused: Hold): void {
	holds = holds.filter((h) => h !== refused);
	redraw();
}

/** The drawing shows a revision: what was dropped up to then is where the drawing has it. */
export function settle(revision: number): void {
	holds = holds.filter((h) => h.until > revision);
	redraw();
}

/** Whether something is drawn elsewhere than the kit has it. */
export const unsettled = (): boolean => holds.length > 0;

function redraw(): void {
	groups = new Map();
	for (const moved of drawing()?.querySelectorAll("[data-fitting][transform]") ?? []) moved.removeAttribute("transform");
	for (const h of holds) shift(h.ids, still);
}

const add = (a: Shift, b: Shift): Shift => ({ dx: a.dx + b.dx, dy: a.dy + b.dy, dz: a.dz + b.dz });

function drawnOf(id: string): Drawn[] {
	let drawn = groups.get(id);
	if (!drawn) {
		const all = views();
		drawn = groupsOf(id).flatMap((element) => {
			const view = all.find((v) => v.element.contains(element));
			return view ? [{ element, view }] : [];
		});
		groups.set(id, drawn);
	}
	return drawn;
}
