// The paper: which part of the sheet the window shows. Only the view box of the drawing is changed.

import { drawing, sheet } from "./drawing";
import { afterSwap } from "./regions";

export interface Rect {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

const closest = 12; // times nearer than the whole

let home: Rect | undefined; // the one view that is shown unzoomed on a phone; none is the whole sheet
let shown: Rect | undefined; // none is home

const watchers = new Set<() => void>();

/** Hears when another part of the sheet is shown. */
export function whenShown(then: () => void): void {
	watchers.add(then);
}

let hand = false;

/** Whether the next drag moves the paper, whatever lies under it: while the space bar is held. */
export const held = (): boolean => hand;

let movedByHand = false;

export function hold(is: boolean): void {
	hand = is;
	movedByHand = false;
	sheet()?.classList.toggle("is-held", is);
}

/** Ends that; whether the paper was moved meanwhile. */
export function letGo(): boolean {
	const moved = movedByHand;
	hold(false);
	return moved;
}

/** A place of the window on the sheet. */
export function onPaper(clientX: number, clientY: number): { x: number; y: number } {
	const matrix = drawing()?.getScreenCTM();
	return matrix ? new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse()) : { x: 0, y: 0 };
}

/** How many times nearer the drawing is than unzoomed. */
export const nearness = (): number => (shown ? frame().width / shown.width : 1);

/** Millimetres of the sheet for one pixel of the window. */
export const pixel = (): number => 1 / (drawing()?.getScreenCTM()?.a ?? 1);

/** The corner of what is shown [mm of the sheet]. */
export const corner = (): { x: number; y: number } => shown ?? frame();

/** The part of the window in which the drawing is seen, where not all of it is. */
export function seen(): Rect | undefined {
	const r = nearness() > 1 ? drawing()?.getBoundingClientRect() : undefined;
	if (!r) return undefined;
	const [top, foot] = [Math.max(0, r.top), Math.min(window.innerHeight, r.bottom)];
	return { x: r.left, y: top, width: r.width, height: foot - top };
}

/** Shows the part about a place of the window that many times larger. False if it cannot go further that way. */
export function zoom(times: number, clientX: number, clientY: number): boolean {
	const svg = drawing();
	const matrix = svg?.getScreenCTM();
	if (!svg || !matrix) return false;
	const from = shown ?? frame();
	const to = Math.min(closest, Math.max(1, nearness() * times));
	const share = nearness() / to; // new width over old
	if (share === 1) return false;
	const at = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
	show({ x: at.x - (at.x - from.x) * share, y: at.y - (at.y - from.y) * share, width: from.width * share, height: from.height * share });
	return true;
}

/** Moves the paper by pixels of the window. */
export function pan(x: number, y: number): void {
	const from = shown ?? frame();
	const mm = pixel();
	movedByHand = true;
	show({ ...from, x: from.x - x * mm, y: from.y - y * mm });
}

export function whole(): void {
	show(frame());
}

/** Makes a part of the sheet what is shown unzoomed; none is the whole sheet. */
export function setHome(rect: Rect | undefined): void {
	home = rect;
	shown = undefined;
	apply();
}

/** The part that is shown unzoomed. */
export const frame = (): Rect => home ?? sheetRect();

/** The whole sheet, as the server drew it. */
function sheetRect(): Rect {
	const [x, y, width, height] = (drawing()?.dataset["whole"] ?? "0 0 420 297").split(/[ ,]+/).map(Number);
	return { x: x!, y: y!, width: width!, height: height! };
}

/** Keeps the window within what is shown unzoomed. */
function show(r: Rect): void {
	const f = frame();
	const within = (v: number, from: number, room: number) => Math.min(from + Math.max(0, room), Math.max(from, v));
	const width = Math.min(r.width, f.width);
	const height = Math.min(r.height, f.height);
	shown = { width, height, x: within(r.x, f.x, f.width - width), y: within(r.y, f.y, f.height - height) };
	apply();
}

function apply(): void {
	const r = shown ?? frame();
	drawing()?.setAttribute("viewBox", [r.x, r.y, r.width, r.height].map((v) => v.toFixed(2)).join(" "));
	sheet()?.classList.toggle("is-zoomed", nearness() > 1.001);
	for (const then of watchers) then();
}

/** Remembers the sheet's own size and keeps the window through swaps. */
export function begin(): void {
	const remember = () => {
		const svg = drawing();
		if (svg && !svg.dataset["whole"]) svg.dataset["whole"] = svg.getAttribute("viewBox") ?? "";
	};
	remember();
	afterSwap((region) => {
		if (region !== "drawing") return;
		remember();
		apply();
	});
	const svg = drawing();
	if (svg) new ResizeObserver(() => watchers.forEach((then) => then())).observe(svg); // handles are drawn in pixels of the window
}
