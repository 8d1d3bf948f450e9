// What handles look like and where they are: on the edges and corners of a box, and one off it that turns. What does not stretch or turn has a
// handle too: it says why.

import { axesOf, faceOnSheet, svgElement, views, type View } from "./drawing";
import { join } from "./geometry";
import type { KitFitting } from "./kit";
import * as paper from "./paper";
import { axes, axisOf, offEdge, outside, whyFixed, type FaceName } from "./shape";
import { faceOn } from "./snap";

const touched = matchMedia("(pointer: coarse), (max-width: 640px)");
const target = touched.matches ? 36 : 24; // px
const mark = 8; // px
const close = 64; // px: a smaller box has its handles outside, so that it can still be taken hold of
const aside = 14; // px that they stand outside then
const tooSmall = 70; // px: under a finger a smaller box has no handles, since they would be all of it
const stem = 42; // px from the box to the handle that turns it

/** A handle: where it is on the sheet, and what it does. */
export interface Grip {
	readonly x: number;
	readonly y: number;
	readonly faces: readonly FaceName[]; // none: it turns
	readonly why: string | undefined; // it stays as it is
	readonly edge?: number; // of the box, where the stem of a turning handle begins
}

/** The box about several, in every view. */
export function boxAbout(all: readonly KitFitting[]): SVGElement {
	const { min, max } = join(all);
	const d = views().filter((v) => getComputedStyle(v.element).visibility !== "hidden").map((v) => {
		const [across, along] = axesOf[v.name];
		const at = (axis: typeof across, corner: readonly number[]) => faceOnSheet(v, axis, corner[axes.indexOf(axis)]!)!.at.toFixed(2);
		return `M${at(across, min)} ${at(along, min)}H${at(across, max)}V${at(along, max)}H${at(across, min)}Z`;
	});
	return svgElement("path", { class: "about", d: d.join("") });
}

/** The handles of a fitting in a view. */
export function gripsOf(f: KitFitting, v: View): Grip[] {
	const px = paper.pixel();
	const [across, along] = axesOf[v.name];
	const at = (axis: typeof across, high: boolean) => faceOnSheet(v, axis, (high ? f.max : f.min)[axes.indexOf(axis)]!)!.at;
	const sides = [false, true];
	const [wide, high] = [Math.abs(at(across, true) - at(across, false)) / px, Math.abs(at(along, true) - at(along, false)) / px];
	if (touched.matches && Math.min(wide, high) < tooSmall) return [];
	const small = Math.min(wide, high) < close;
	const out = (axis: typeof across, side: number, isHigh: boolean) =>
		(small ? aside : outside(side, target)) * px * (isHigh === at(axis, true) > at(axis, false) ? 1 : -1);
	const x = (isHigh: boolean) => at(across, isHigh) + out(across, wide, isHigh);
	const y = (isHigh: boolean) => at(along, isHigh) + out(along, high, isHigh);
	const middle = { x: (at(across, false) + at(across, true)) / 2, y: (at(along, false) + at(along, true)) / 2 };
	const why = (...faces: FaceName[]) => faces.map((face) => whyFixed(f, face)).find((one) => one !== undefined);
	const grips: Grip[] = [
		...sides.map((h) => ({ x: x(h), y: middle.y, faces: [faceOn(across, h)], why: why(faceOn(across, h)) })),
		...sides.map((h) => ({ x: middle.x, y: y(h), faces: [faceOn(along, h)], why: why(faceOn(along, h)) })),
	];
	if (!small) for (const a of sides) for (const b of sides) {
		const faces = [faceOn(across, a), faceOn(along, b)];
		if (!why(...faces)) grips.push({ x: x(a), y: y(b), faces, why: undefined });
	}
	if (v.name === "plan") grips.push(turnGrip(f, v, [at(across, false), at(across, true)], [at(along, false), at(along, true)]));
	return grips;
}

/** The handle that turns stands off the box towards the middle of the van, beside the handle of that edge, and always on the sheet. */
function turnGrip(f: KitFitting, v: View, x: readonly [number, number], y: readonly [number, number]): Grip {
	const middle = (y[0] + y[1]) / 2;
	const down = middle < v.originY ? 1 : -1;
	const px = paper.pixel();
	const { y: top, height } = paper.frame();
	const place = offEdge([Math.min(...y), Math.max(...y)], down, stem * px, [top + (target / 2) * px, top + height - (target / 2) * px]);
	return { x: x[0] + 0.75 * (x[1] - x[0]), y: place.at, faces: [], why: f.noTurn, edge: place.edge };
}

/** A handle is drawn small and taken hold of within a larger square. */
export function drawn(g: Grip, f: KitFitting, v: View, press: (e: PointerEvent) => void): SVGGElement {
	const px = paper.pixel();
	const round = g.faces.length === 0;
	const group = svgElement("g", { class: `grip${g.why ? " is-fixed" : ""}`, "data-grip": round ? "turn" : g.faces.join(" ") });
	group.classList.add(round ? "turns" : g.faces.length === 2 ? cornerOf(g, f, v) : axesOf[v.name][0] === axisOf(g.faces[0]!) ? "across" : "along");
	const square = (size: number, name: string, corner = 0) => svgElement("rect", {
		class: name, x: String(g.x - (size * px) / 2), y: String(g.y - (size * px) / 2), width: String(size * px), height: String(size * px), rx: String(corner * px),
	});
	if (g.edge !== undefined) group.append(svgElement("path", { class: "stem", d: `M${g.x} ${g.edge}V${g.y}` }));
	group.append(square(target, "target"), g.why ? crossed(g, px) : square(mark, "mark", round ? mark / 2 : 1));
	const title = svgElement("title");
	title.textContent = g.why ?? (round ? "turn it" : `move its ${g.faces.join(" and ")}`);
	group.append(title);
	group.addEventListener("pointerdown", press);
	return group;
}

/** What does not move has a small cross instead of a square. */
function crossed(g: Grip, px: number): SVGElement {
	const r = 3 * px;
	return svgElement("path", { class: "cross", d: `M${g.x - r} ${g.y - r}l${2 * r} ${2 * r}M${g.x - r} ${g.y + r}l${2 * r} ${-2 * r}` });
}

/** Which way a corner is pulled on the sheet. */
function cornerOf(g: Grip, f: KitFitting, v: View): string {
	const [across, along] = axesOf[v.name];
	const middle = (axis: typeof across) => faceOnSheet(v, axis, (f.min[axes.indexOf(axis)]! + f.max[axes.indexOf(axis)]!) / 2)!.at;
	return (g.x < middle(across)) === (g.y < middle(along)) ? "falling" : "rising";
}
