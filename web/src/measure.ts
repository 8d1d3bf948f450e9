// Measuring on the paper: two presses, each drawn to a corner or a face near it; how far along, across or up, and straight. Without a
// pointer, two things of the list and the clear space between them.

import { between } from "./arrange";
import { axesOf, drawing, lineOf, nameOf, sheet, svgElement, views, type View } from "./drawing";
import type { Axis } from "./kit";
import * as kits from "./kits";
import * as paper from "./paper";
import { afterSwap } from "./regions";
import { axes } from "./shape";
import { speak } from "./speak";

const near = 12; // px within which a corner or a face takes the point
const words: Readonly<Record<Axis, string>> = { x: "along", y: "across", z: "up" };

interface Spot {
	readonly view: View;
	readonly u: number; // mm of the van, across the sheet
	readonly v: number; // and along it
}

const layer = svgElement("g", { class: "measure", "data-keep": "", "aria-hidden": "true" });
let active = false;
let from: Spot | undefined;
let done: { readonly from: Spot; readonly to: Spot } | undefined;
const hearers = new Set<() => void>();

/** Whether presses on the paper are for measuring. */
export const on = (): boolean => active;

export function use(is: boolean): void {
	active = is;
	from = done = undefined;
	layer.replaceChildren();
	sheet()?.classList.toggle("is-measuring", is);
	if (is) {
		void kits.bring();
		drawing()?.append(layer);
	} else layer.remove();
	for (const then of hearers) then();
}

/** Hears when the tool is taken up or laid down. */
export function whenUsed(then: () => void): void {
	hearers.add(then);
}

export function begin(): void {
	const on = sheet();
	if (!on) return;
	on.addEventListener("pointerdown", press, { capture: true });
	on.addEventListener("pointermove", hover);
	document.addEventListener("keydown", (e) => {
		if (e.key !== "Escape" || !active) return;
		if (from || done) {
			from = done = undefined;
			layer.replaceChildren();
		} else use(false);
	});
	afterSwap((region) => region === "drawing" && active && drawing()?.append(layer));
	paper.whenShown(() => active && draw());
}

function press(e: PointerEvent): void {
	if (!active || e.button !== 0 || !e.isPrimary || paper.held() || !(e.target as Element).closest("svg.drawing")) return;
	e.stopPropagation();
	e.preventDefault();
	const spot = spotAt(e);
	if (!spot) return;
	if (from && from.view.name === spot.view.name) {
		done = { from, to: spot };
		from = undefined;
		speak(told(done.from, done.to));
	} else {
		from = spot;
		done = undefined;
	}
	draw(spot);
}

function hover(e: PointerEvent): void {
	if (!active || done || e.buttons > 1) return;
	const spot = spotAt(e);
	if (spot) draw(spot);
}

/** The place under the pointer in its view, drawn to what is near. */
function spotAt(e: PointerEvent): Spot | undefined {
	const p = paper.onPaper(e.clientX, e.clientY);
	const v = viewNear(p.x, p.y);
	if (!v) return undefined;
	const tolerance = (near * paper.pixel()) / v.scale;
	const [u, w] = drawnTo(v, (p.x - v.originX) / v.scale, (p.y - v.originY) / (v.scale * v.down), tolerance);
	return { view: v, u, v: w };
}

/** The view a place is in: that of the first point, else the one whose box is nearest. */
function viewNear(x: number, y: number): View | undefined {
	const away = (v: View) => {
		const b = v.element.getBBox();
		return Math.max(b.x - x, x - b.x - b.width, 0) + Math.max(b.y - y, y - b.y - b.height, 0);
	};
	const all = views().filter((v) => getComputedStyle(v.element).visibility === "visible");
	if (from) return all.find((v) => v.name === from!.view.name);
	return all.toSorted((a, b) => away(a) - away(b))[0];
}

/** Draws a place to the nearest face on each axis of the faces that reach to it; where two meet, that is their corner. */
function drawnTo(v: View, u: number, w: number, tolerance: number): [number, number] {
	const kit = kits.current();
	const [i, j] = axesOf[v.name].map((axis) => axes.indexOf(axis)) as [number, number];
	let [bestU, bestW] = [tolerance, tolerance];
	let [toU, toW] = [u, w];
	const tryU = (at: number) => {
		if (Math.abs(at - u) < bestU) [bestU, toU] = [Math.abs(at - u), at];
	};
	const tryW = (at: number) => {
		if (Math.abs(at - w) < bestW) [bestW, toW] = [Math.abs(at - w), at];
	};
	for (const f of kit?.fittings ?? []) {
		const [u0, u1, w0, w1] = [f.min[i]!, f.max[i]!, f.min[j]!, f.max[j]!];
		if (w > w0 - tolerance && w < w1 + tolerance) [u0, u1].forEach(tryU);
		if (u > u0 - tolerance && u < u1 + tolerance) [w0, w1].forEach(tryW);
	}
	for (const s of kit?.snaps ?? []) {
		if (s.face.includes(".")) continue;
		if (axes.indexOf(s.axis) === i) tryU(s.at);
		if (axes.indexOf(s.axis) === j) tryW(s.at);
	}
	return [toU, toW];
}

const rounded = (mm: number): string => String(Math.round(Math.abs(mm))).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

function told(a: Spot, b: Spot): string {
	const [across, along] = axesOf[a.view.name];
	const [du, dv] = [b.u - a.u, b.v - a.v];
	return `${words[across]} ${rounded(du)}, ${words[along]} ${rounded(dv)}, straight ${rounded(Math.hypot(du, dv))} mm`;
}

function draw(hovered?: Spot): void {
	const px = paper.pixel();
	const a = from ?? done?.from;
	const b = done?.to ?? hovered;
	const at = (s: Spot) => [s.view.originX + s.u * s.view.scale, s.view.originY + s.v * s.view.scale * s.view.down] as const;
	layer.replaceChildren();
	for (const s of [a, b]) if (s) layer.append(svgElement("circle", { cx: String(at(s)[0]), cy: String(at(s)[1]), r: String(4 * px) }));
	if (!a || !b || a === b) return;
	const [[ax, ay], [bx, by]] = [at(a), at(b)];
	layer.prepend(svgElement("path", { class: "legs", d: `M${ax} ${ay}H${bx}V${by}` }), svgElement("path", { class: "straight", d: `M${ax} ${ay}L${bx} ${by}` }));
	const [across, along] = axesOf[a.view.name];
	const [du, dv] = [b.u - a.u, b.v - a.v];
	const say = (text: string, x: number, y: number, anchor: string, strong = false) => {
		const t = svgElement("text", { x: String(x), y: String(y), "text-anchor": anchor, "font-size": String(13 * px), ...(strong && { class: "strong" }) });
		t.textContent = text;
		layer.append(t);
		keepOnPaper(t);
	};
	// Each length stands outside the triangle, on its own side; where there is hardly a triangle, one length says all.
	const [wide, high] = [Math.abs(bx - ax) > 40 * px, Math.abs(by - ay) > 18 * px];
	const straight = rounded(Math.hypot(du, dv));
	const besides = wide !== high && Math.abs(wide ? dv : du) >= 0.5 ? `, straight ${straight}` : "";
	const [outside, anchor] = bx < ax ? [6, "start"] : [-6, "end"];
	if (wide) say(`${words[across]} ${rounded(du)}${besides}`, (ax + bx) / 2, ay + (by < ay ? 16 : -6) * px, "middle", !high);
	if (high) say(`${words[along]} ${rounded(dv)}${besides}`, bx - outside * px, (ay + by) / 2, bx < ax ? "end" : "start", !wide);
	if (wide === high) say(straight, (ax + bx) / 2 + outside * px, (ay + by) / 2 + (by > ay ? 16 : -6) * px, anchor, true);
}

/** Shifts a text that would be cut off at an edge of the drawing. */
function keepOnPaper(t: SVGTextElement): void {
	const seen = drawing()?.viewBox.baseVal;
	if (!seen) return;
	const b = t.getBBox();
	const by = Math.max(0, seen.x - b.x) - Math.max(0, b.x + b.width - seen.x - seen.width);
	if (by !== 0) t.setAttribute("x", String(Number(t.getAttribute("x")) + by));
}

/** Two things of the list, and the clear space between them. */
export function betweenTwo(): HTMLElement {
	const row = document.createElement("div");
	row.className = "between";
	const [a, b] = [picker("clear space from"), picker("to")];
	const out = document.createElement("output");
	const reckon = () => {
		const kit = kits.current();
		const [f, g] = [a, b].map((s) => kit?.fittings.find((one) => one.id === s.select.value));
		if (!f || !g || f === g) {
			out.textContent = f && g ? "the same thing" : "";
			return;
		}
		const gap = between(f, g);
		out.textContent = `${axes.map((axis, i) => `${words[axis]} ${rounded(gap[i]!)}`).join(", ")}, straight ${rounded(Math.hypot(...gap))} mm`;
	};
	for (const s of [a, b]) {
		s.select.addEventListener("change", reckon);
		s.select.addEventListener("focus", () => fill(s.select));
		fill(s.select);
	}
	kits.whenCame(reckon);
	row.append(a.label, b.label, out);
	return row;
}

function picker(text: string): { label: HTMLLabelElement; select: HTMLSelectElement } {
	const label = document.createElement("label");
	const select = document.createElement("select");
	label.append(`${text} `, select);
	return { label, select };
}

/** The things that have a place, by name. */
function fill(select: HTMLSelectElement): void {
	const before = select.value;
	const all = (kits.current()?.fittings ?? []).filter((f) => lineOf(f.id)).map((f) => [f.id, nameOf(f.id)] as const);
	select.replaceChildren(...[["", "choose"] as const, ...all.toSorted((x, y) => x[1].localeCompare(y[1]))].map(([value, name]) => new Option(name, value)));
	select.value = all.some(([id]) => id === before) ? before : "";
}
