// Moving the paper: wheel and two fingers zoom, two fingers and a drag beside all fittings move it. Buttons do the same.

import { fittingAt, sheet } from "./drawing";
import * as drag from "./drag";
import * as paper from "./paper";

type Finger = { x: number; y: number };

const fingers = new Map<number, Finger>();

export function begin(): void {
	const on = sheet();
	if (!on) return;
	on.addEventListener("wheel", wheel, { passive: false });
	on.addEventListener("pointerdown", press);
	on.addEventListener("pointermove", move);
	for (const end of ["pointerup", "pointercancel", "lostpointercapture"] as const) on.addEventListener(end, (e) => fingers.delete(e.pointerId));
	const two = (e: TouchEvent) => e.touches.length > 1 && e.preventDefault(); // the browser's own zoom would take them
	on.addEventListener("touchstart", two, { passive: false });
	on.addEventListener("touchmove", two, { passive: false });
}

// At its whole size the drawing lets the page scroll.
function wheel(e: WheelEvent): void {
	if (drag.underWay()) {
		e.preventDefault();
		return;
	}
	const times = Math.exp(-e.deltaY * (e.deltaMode === WheelEvent.DOM_DELTA_LINE ? 0.05 : 0.0015));
	if (paper.zoom(times, e.clientX, e.clientY) || paper.nearness() > 1) e.preventDefault();
}

function press(e: PointerEvent): void {
	const beside = e.pointerType === "touch" || e.button === 1 || (e.button === 0 && !fittingAt(e.target as Element));
	if (!beside || (e.target as Element).closest("a, button")) return;
	fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
}

function move(e: PointerEvent): void {
	const finger = fingers.get(e.pointerId);
	if (!finger) return;
	const before = spread();
	const by = { x: e.clientX - finger.x, y: e.clientY - finger.y };
	finger.x = e.clientX;
	finger.y = e.clientY;
	if (drag.underWay()) return;
	if (e.pointerType !== "touch") {
		if (paper.nearness() > 1) paper.pan(by.x, by.y);
		return;
	}
	if (fingers.size !== 2) return; // one finger scrolls the page or drags what is selected
	const after = spread();
	paper.pan(after.x - before.x, after.y - before.y);
	if (before.apart > 0) paper.zoom(after.apart / before.apart, after.x, after.y);
}

/** The middle of two fingers and how far they are apart. */
function spread(): { x: number; y: number; apart: number } {
	const [a, b] = [...fingers.values()];
	if (!a || !b) return { x: 0, y: 0, apart: 0 };
	return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, apart: Math.hypot(a.x - b.x, a.y - b.y) };
}
