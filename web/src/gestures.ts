// Moving the paper: the wheel and pinching zoom; two fingers, the middle button, a drag with the space bar held and one beside all
// fittings move it. Buttons and keys do the same.

import { fittingAt, sheet } from "./drawing";
import * as drag from "./drag";
import * as grips from "./grips";
import * as marquee from "./marquee";
import * as measure from "./measure";
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

const busy = (): boolean => drag.underWay() || grips.underWay() || marquee.on();

// At its whole size the drawing lets the page scroll. A pinch on a touchpad comes as a wheel with Ctrl; two fingers that scroll there come
// in small steps or sideways, and move the paper once it is nearer.
function wheel(e: WheelEvent): void {
	if (busy()) {
		e.preventDefault();
		return;
	}
	const lines = e.deltaMode === WheelEvent.DOM_DELTA_LINE;
	const fingers = !e.ctrlKey && !lines && (Math.abs(e.deltaX) > 1 || Math.abs(e.deltaY) < 40);
	if (fingers && paper.nearness() > 1) {
		paper.pan(-e.deltaX, -e.deltaY);
		e.preventDefault();
		return;
	}
	if (fingers) return;
	const times = Math.exp(-e.deltaY * (lines ? 0.05 : e.ctrlKey ? 0.01 : 0.0015));
	if (paper.zoom(times, e.clientX, e.clientY) || paper.nearness() > 1 || e.ctrlKey) e.preventDefault();
}

function press(e: PointerEvent): void {
	const beside = e.pointerType === "touch" || e.button === 1 || (e.button === 0 && (paper.held() || (!fittingAt(e.target as Element) && !e.shiftKey && !measure.on())));
	if (e.button === 1) e.preventDefault(); // the browser's own scrolling by the middle button
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
	if (busy()) return;
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
