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
	readonly #across = new Dimension(false);
	readonly #along = new Dimension(true);
	readonly #guides = svgElement("path", { class: "pen-centre guide" });
	readonly #names = [svgElement("text", { class: "guide-name" }), svgElement("text", { class: "guide-name" })];
	readonly #shape = svgElement("path", { class: "shape" });
	readonly #value = svgElement("text", { class: "strong value" });
	readonly #gaps = [new Dimension(false), new Dimension(false), new Dimension(true), new Dimension(true)];
	readonly #views = views();
	readonly #from: DOMRect;
	readonly #frame: DOMRect;

	constructor(ids: readonly string[], readonly view: View, readonly size: number) {
		const groups = ids.flatMap((id) => groupsOf(id));
		this.#from = about(groups.filter((g) => view.element.contains(g)));
		this.#frame = view.element.getBBox();
		for (const g of groups) this.#layer.append(ghost(g));
		this.#layer.append(this.#guides, this.#shape, this.#across.element, this.#along.element, ...this.#gaps.map((g) => g.element), ...this.#names, this.#value);
		for (const gap of this.#gaps) gap.element.classList.add("gap");
		this.lay();
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
		this.#across.show(b.x, b.x + u, Math.min(b.y, b.y + v) - gap, mm(u), this.size);
		this.#along.show(b.y, b.y + v, Math.min(b.x, b.x + u) - gap, mm(v), this.size);
	}

	/** Shows what it was laid against, by a line with its name. */
	guide(caught: readonly Caught[]): void {
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
		const words = face ? c.says.replaceAll("-", " ").replace(".", ", ") : "";
		if (text.textContent !== words) text.textContent = words;
		if (!face) return;
		const f = this.#frame;
		place(text, face.across ? face.at + this.size : f.x + f.width, face.across ? f.y + f.height - this.size : face.at - this.size, figure * this.size * 0.85);
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
			line.show(0, 0, 0, "", this.size);
			return;
		}
		const v = this.view;
		const other = axesOf[v.name][gap.axis === axesOf[v.name][0] ? 1 : 0];
		const beside = faceOnSheet(v, other, gap.at[axes.indexOf(other)]!)!.at;
		const [from, to] = [gap.from, gap.to].map((at) => faceOnSheet(v, gap.axis, at)!.at);
		line.show(from!, to!, beside, `${Math.round(Math.abs(gap.to - gap.from))}`, this.size);
	}

	/** Shows the outline of another shape in every view, and a value beside a place of the sheet. */
	reshape(f: KitFitting, value: string, x: number, y: number): void {
		this.#shape.setAttribute("d", this.#views.map((v) => outlineOf(f, v)).join(""));
		if (this.#value.textContent !== value) this.#value.textContent = value;
		place(this.#value, x, y, figure * this.size * 1.15);
	}

	/** Leaves only the new shape, until the drawing shows it. */
	rest(): void {
		this.#layer.classList.add("is-resting");
	}

	remove(): void {
		this.#layer.remove();
	}
}

function place(text: SVGTextElement, x: number, y: number, size: number): void {
	text.setAttribute("x", x.toFixed(2));
	text.setAttribute("y", y.toFixed(2));
	text.setAttribute("font-size", size.toFixed(2));
}

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

/** A dimension line with its figure, across the sheet or along it. */
class Dimension {
	readonly element = svgElement("g");
	readonly #line = svgElement("path", { class: "pen-dimension" });
	readonly #text = svgElement("text", { class: "strong" });
	#gone = true;

	constructor(readonly along: boolean) {
		this.#text.setAttribute("text-anchor", along ? "end" : "middle");
		this.element.append(this.#line, this.#text);
	}

	show(from: number, to: number, beside: number, figures: string, size: number): void {
		const gone = Math.abs(to - from) < 1e-6;
		if (gone && this.#gone) return;
		this.#gone = gone;
		if (this.#text.textContent !== figures || gone) this.#text.textContent = gone ? "" : figures;
		this.#line.setAttribute("d", gone ? "" : this.#lines(from, to, beside, size));
		if (gone) return;
		const middle = (from + to) / 2;
		this.#text.setAttribute("font-size", String(figure * size));
		this.#text.setAttribute("x", String(this.along ? beside - 1.5 * size : middle));
		this.#text.setAttribute("y", String(this.along ? middle + size : beside - size));
	}

	/** A line with a stroke at each end. */
	#lines(from: number, to: number, beside: number, tick: number): string {
		const place = (at: number, side: number) => (this.along ? `${side} ${at}` : `${at} ${side}`);
		const ends = [from, to].map((at) => `M${place(at, beside - tick)}L${place(at, beside + tick)}`);
		return `M${place(from, beside)}L${place(to, beside)}${ends.join("")}`;
	}
}
