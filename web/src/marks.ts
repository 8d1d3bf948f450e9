// What is drawn over the drawing during a move: a ghost where the fitting was, how far it went, and the
// faces it was laid against. Made of attributes and classes only.

import { drawing, faceOnSheet, groupsOf, onSheet, svgElement, type View } from "./drawing";
import type { Shift } from "./geometry";
import type { Caught } from "./snap";

/** Distance of dimension lines from the fitting, and height of their figures [mm of the sheet at its whole size]. */
const off = 3;
const figure = 3.2;

export class Marks {
	readonly #layer = svgElement("g", { class: "live", "data-keep": "", "aria-hidden": "true" });
	readonly #across = new Dimension(false);
	readonly #along = new Dimension(true);
	readonly #guides = svgElement("path", { class: "pen-centre guide" });
	readonly #from: DOMRect;
	readonly #frame: DOMRect;

	constructor(readonly id: string, readonly view: View, readonly size: number) {
		const group = groupsOf(id).find((g) => view.element.contains(g));
		this.#from = group?.getBBox() ?? new DOMRect();
		this.#frame = view.element.getBBox();
		for (const g of groupsOf(id)) this.#layer.append(ghost(g));
		this.#layer.append(this.#guides, this.#across.element, this.#along.element);
		this.lay();
	}

	/** Puts the marks on top, also of a drawing drawn anew. */
	lay(): void {
		drawing()?.append(this.#layer);
	}

	show(shift: Shift, caught: readonly Caught[]): void {
		const [u, v] = onSheet(this.view, shift);
		const b = this.#from;
		const gap = off * this.size;
		const mm = (l: number) => `${Math.round(Math.abs(l / this.view.scale))}`;
		this.#across.show(b.x, b.x + u, Math.min(b.y, b.y + v) - gap, mm(u), this.size);
		this.#along.show(b.y, b.y + v, Math.min(b.x, b.x + u) - gap, mm(v), this.size);
		this.#guides.setAttribute("d", caught.map((c) => this.#guide(c)).join(""));
	}

	#guide(c: Caught): string {
		const face = faceOnSheet(this.view, c.axis, c.at);
		const f = this.#frame;
		if (!face) return "";
		return face.across ? `M${face.at} ${f.y}V${f.y + f.height}` : `M${f.x} ${face.at}H${f.x + f.width}`;
	}

	remove(): void {
		this.#layer.remove();
	}
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
		this.#text.setAttribute("y", String(this.along ? middle + size : beside - 1.5 * size));
	}

	/** A line with a stroke at each end. */
	#lines(from: number, to: number, beside: number, tick: number): string {
		const place = (at: number, side: number) => (this.along ? `${side} ${at}` : `${at} ${side}`);
		const ends = [from, to].map((at) => `M${place(at, beside - tick)}L${place(at, beside + tick)}`);
		return `M${place(from, beside)}L${place(to, beside)}${ends.join("")}`;
	}
}
