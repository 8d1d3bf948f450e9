// What is drawn over the drawing during a move: a ghost where the fitting was, how far it went, the shape it would have, what it was
// laid against or in line with, and how far it is to the next things. Made of attributes and classes only.

import { axesOf, drawing, faceOnSheet, groupsOf, onSheet, svgElement, views, type View } from "./drawing";
import type { Gap } from "./gaps";
import type { Shift } from "./geometry";
import type { KitFitting } from "./kit";
import { axes } from "./shape";
import type { Caught } from "./snap";

/** Distance of dimension lines from the fitting, and height of their figures [mm of the sheet at its whole size]. */
const off = 3;
const figure = 3.4;

export class Marks {
	readonly #layer = svgElement("g", { class: "live", "data-keep": "", "aria-hidden": "true" });
	readonly #across: Dimension;
	readonly #along: Dimension;
	readonly #guides = svgElement("path", { class: "pen-centre guide" });
	readonly #names = [svgElement("text", { class: "guide-name" }), svgElement("text", { class: "guide-name" })];
	readonly #shape = svgElement("path", { class: "shape" });
	readonly #value = svgElement("text", { class: "strong value" });
	readonly #gaps: readonly Dimension[];
	readonly #views = views().filter((v) => isSeen(v.element)); // on a phone one view is shown: nothing is drawn of the others
	readonly #from: DOMRect;
	readonly #frame: DOMRect;
	#guided = "";

	constructor(ids: readonly string[], readonly view: View, readonly size: number) {
		const dimension = (along: boolean) => new Dimension(along, size);
		[this.#across, this.#along] = [dimension(false), dimension(true)];
		this.#gaps = [false, false, true, true].map(dimension);
		const groups = ids.flatMap((id) => groupsOf(id));
		this.#from = about(groups.filter((g) => view.element.contains(g)));
		this.#frame = view.element.getBBox();
		for (const g of groups) if (isSeen(g)) this.#layer.append(ghost(g));
		this.#layer.append(this.#guides, this.#shape, this.#across.element, this.#along.element, ...this.#gaps.map((g) => g.element), ...this.#names, this.#value);
		for (const gap of this.#gaps) gap.element.classList.add("gap");
		for (const name of this.#names) name.setAttribute("font-size", (figure * size * 0.85).toFixed(2));
		this.#value.setAttribute("font-size", (figure * size * 1.15).toFixed(2));
	}

	/** Puts the marks on top, also of a drawing drawn anew. */
	lay(): void {
		drawing()?.append(this.#layer);
	}

	/** Shows how far it went. */
	show(shift: Shift): void {
		const [u, v] = onSheet(this.view, shift);
		const b = this.#from;
		const gap = off * this.size;
		const mm = (l: number) => `${Math.round(Math.abs(l / this.view.scale))}`;
		this.#across.show(b.x, b.x + u, Math.min(b.y, b.y + v) - gap, mm(u));
		this.#along.show(b.y, b.y + v, Math.min(b.x, b.x + u) - gap, mm(v));
	}

	/** Shows what it was laid against, by a line with its name. */
	guide(caught: readonly Caught[]): void {
		const guided = caught.map((c) => `${c.axis} ${c.at} ${c.says}`).join();
		if (guided === this.#guided) return;
		this.#guided = guided;
		this.#guides.setAttribute("d", caught.map((c) => this.#guide(c)).join(""));
		this.#names.forEach((name, i) => this.#name(name, caught[i]));
	}

	#guide(c: Caught): string {
		const face = faceOnSheet(this.view, c.axis, c.at);
		const f = this.#frame;
		if (!face) return "";
		return face.across ? `M${face.at} ${f.y}V${f.y + f.height}` : `M${f.x} ${face.at}H${f.x + f.width}`;
	}

	#name(text: SVGTextElement, c: Caught | undefined): void {
		const face = c && faceOnSheet(this.view, c.axis, c.at);
		write(text, face ? c.says.replaceAll("-", " ").replace(".", ", ") : "");
		if (!face) return;
		const f = this.#frame;
		put(text, face.across ? face.at + this.size : f.x + f.width, face.across ? f.y + f.height - this.size : face.at - this.size);
		text.setAttribute("text-anchor", face.across ? "start" : "end");
	}

	/** Shows the clear spaces beside it. */
	gaps(gaps: readonly Gap[]): void {
		const [across, along] = axesOf[this.view.name];
		const of = (axis: string) => gaps.filter((g) => g.axis === axis);
		[...[of(across)[0], of(across)[1]], ...[of(along)[0], of(along)[1]]].forEach((gap, i) => this.#gap(this.#gaps[i]!, gap));
	}

	#gap(line: Dimension, gap: Gap | undefined): void {
		if (!gap) {
			line.show(0, 0, 0, "");
			return;
		}
		const v = this.view;
		const other = axesOf[v.name][gap.axis === axesOf[v.name][0] ? 1 : 0];
		const beside = faceOnSheet(v, other, gap.at[axes.indexOf(other)]!)!.at;
		const [from, to] = [gap.from, gap.to].map((at) => faceOnSheet(v, gap.axis, at)!.at);
		line.show(from!, to!, beside, `${Math.round(Math.abs(gap.to - gap.from))}`);
	}

	/** Shows the outline of another shape in every view, and a value beside a place of the sheet. */
	reshape(f: KitFitting, value: string, x: number, y: number): void {
		this.#shape.setAttribute("d", this.#views.map((v) => outlineOf(f, v)).join(""));
		write(this.#value, value);
		put(this.#value, x, y);
	}

	/** Leaves only the new shape, until the drawing shows it. */
	rest(): void {
		this.#layer.classList.add("is-resting");
	}

	remove(): void {
		this.#layer.remove();
	}
}

const isSeen = (e: Element): boolean => getComputedStyle(e).visibility === "visible";

/** A fitting in a view: its outline from above, the box about it from elsewhere. */
function outlineOf(f: KitFitting, v: View): string {
	const at = (a: number, b: number) => `${(v.originX + a * v.scale).toFixed(2)} ${(v.originY + b * v.scale * v.down).toFixed(2)}`;
	if (v.name === "plan" && f.prisms.length === 1) return `M${f.prisms[0]!.outline.map(([x, y]) => at(x, y)).join("L")}Z`;
	const [i, j] = axesOf[v.name].map((axis) => axes.indexOf(axis)) as [number, number];
	const [a0, a1, b0, b1] = [f.min[i]!, f.max[i]!, f.min[j]!, f.max[j]!];
	return `M${at(a0, b0)}L${at(a1, b0)}L${at(a1, b1)}L${at(a0, b1)}Z`;
}

/** The box about some groups. */
export function about(groups: readonly SVGGraphicsElement[]): DOMRect {
	const boxes = groups.map((g) => g.getBBox());
	if (boxes.length === 0) return new DOMRect();
	const x = Math.min(...boxes.map((b) => b.x));
	const y = Math.min(...boxes.map((b) => b.y));
	return new DOMRect(x, y, Math.max(...boxes.map((b) => b.x + b.width)) - x, Math.max(...boxes.map((b) => b.y + b.height)) - y);
}

/** A copy of a group that is nothing but its lines. */
function ghost(group: Element): Element {
	const copy = group.cloneNode(true) as Element;
	for (const e of [copy, ...copy.querySelectorAll("*")]) {
		for (const { name } of [...e.attributes]) if (name === "id" || name === "href" || name === "transform" || name.startsWith("data-")) e.removeAttribute(name);
		if (e.localName === "title" || e.localName === "text") e.remove();
	}
	copy.setAttribute("class", "ghost");
	return copy;
}

/** A dimension line with its figure, across the sheet or along it. A drag shows it every frame: what stays as it was is not written again. */
class Dimension {
	readonly element = svgElement("g");
	readonly #line = svgElement("path", { class: "pen-dimension" });
	readonly #text = svgElement("text", { class: "strong" });
	readonly #size: number;
	#shown = "";

	constructor(readonly along: boolean, size: number) {
		this.#size = size;
		this.#text.setAttribute("text-anchor", along ? "end" : "middle");
		this.#text.setAttribute("font-size", (figure * size).toFixed(2));
		this.element.append(this.#line, this.#text);
	}

	show(from: number, to: number, beside: number, figures: string): void {
		const lines = Math.abs(to - from) < 1e-6 ? "" : this.#lines(from, to, beside);
		const shown = lines && lines + figures;
		if (shown === this.#shown) return;
		this.#shown = shown;
		this.#line.setAttribute("d", lines);
		write(this.#text, lines && figures);
		if (!lines) return;
		const middle = (from + to) / 2;
		if (this.along) put(this.#text, beside - 1.5 * this.#size, middle + this.#size);
		else put(this.#text, middle, beside - this.#size);
	}

	/** A line with a stroke at each end. */
	#lines(from: number, to: number, beside: number): string {
		const [a, b] = [from.toFixed(2), to.toFixed(2)];
		const [low, on, high] = [(beside - this.#size).toFixed(2), beside.toFixed(2), (beside + this.#size).toFixed(2)];
		if (this.along) return `M${on} ${a}V${b}M${low} ${a}H${high}M${low} ${b}H${high}`;
		return `M${a} ${on}H${b}M${a} ${low}V${high}M${b} ${low}V${high}`;
	}
}

/** Writes a text that is not written there already. */
function write(text: SVGTextElement, words: string): void {
	if (text.textContent !== words) text.textContent = words;
}

/** Puts a text to a place of the sheet, by the one attribute that lays nothing out anew. */
const put = (text: SVGTextElement, x: number, y: number): void => text.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
