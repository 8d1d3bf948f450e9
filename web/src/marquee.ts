// Choosing several by a frame drawn on the paper: with Shift beside all fittings, or with the tool anywhere.

import { drawing, fittingAt, sheet, svgElement } from "./drawing";
import * as paper from "./paper";
import { all as chosen, selectAll } from "./selection";

let armed = false;
let band: { readonly pointer: number; readonly x: number; readonly y: number; readonly add: boolean; readonly rect: SVGRectElement } | undefined;
let changed = (): void => {};

/** Whether presses on the paper are for the frame. */
export const on = (): boolean => armed || band !== undefined;

/** Makes the next press begin a frame, or not. */
export function arm(is: boolean): void {
	armed = is;
	sheet()?.classList.toggle("is-framing", is);
	changed();
}

/** Hears when the tool is taken up or laid down. */
export function whenArmed(then: () => void): void {
	changed = then;
}

export function begin(): void {
	const on = sheet();
	if (!on) return;
	on.addEventListener("pointerdown", press, { capture: true });
	on.addEventListener("pointermove", move);
	on.addEventListener("pointerup", lift);
	on.addEventListener("pointercancel", end);
	document.addEventListener("keydown", (e) => {
		if (e.key === "Escape" && (band || armed)) {
			e.preventDefault(); // what is chosen stays so
			end();
			arm(false);
		}
	});
	on.addEventListener("touchstart", (e) => (armed || band) && e.cancelable && e.preventDefault(), { passive: false });
}

function press(e: PointerEvent): void {
	const beside = e.shiftKey && !fittingAt(e.target as Element);
	if (e.button !== 0 || !e.isPrimary || paper.held() || !(armed || beside) || !(e.target as Element).closest("svg.drawing")) return;
	e.stopPropagation();
	e.preventDefault();
	const { x, y } = paper.onPaper(e.clientX, e.clientY);
	band = { pointer: e.pointerId, x, y, add: e.shiftKey, rect: svgElement("rect", { class: "marquee", "data-keep": "" }) };
	drawing()?.append(band.rect);
	drawing()?.setPointerCapture(e.pointerId);
}

function move(e: PointerEvent): void {
	if (e.pointerId !== band?.pointer) return;
	const r = rectTo(band, e);
	for (const name of ["x", "y", "width", "height"] as const) band.rect.setAttribute(name, String(r[name]));
}

function rectTo(from: { x: number; y: number }, e: PointerEvent): DOMRect {
	const { x, y } = paper.onPaper(e.clientX, e.clientY);
	return new DOMRect(Math.min(x, from.x), Math.min(y, from.y), Math.abs(x - from.x), Math.abs(y - from.y));
}

function lift(e: PointerEvent): void {
	if (e.pointerId !== band?.pointer) return;
	const within = inside(rectTo(band, e));
	const add = band.add;
	end();
	arm(false);
	selectAll(add ? [...chosen(), ...within] : within);
}

/** The fittings that lie wholly in a frame, in any view that is shown. */
function inside(r: DOMRect): string[] {
	const groups = [...(drawing()?.querySelectorAll<SVGGraphicsElement>("[data-view] [data-fitting]") ?? [])];
	const found = groups.filter((g) => {
		const b = g.getBBox();
		return b.width + b.height > 0 && b.x >= r.x && b.y >= r.y && b.x + b.width <= r.x + r.width && b.y + b.height <= r.y + r.height && getComputedStyle(g).visibility === "visible";
	});
	return [...new Set(found.map((g) => g.dataset["fitting"]!))];
}

function end(): void {
	band?.rect.remove();
	band = undefined;
}
