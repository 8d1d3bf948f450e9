// Dragging a fitting on the drawing. The pointer's place is only noted when it moves; at most once a
// frame the fitting is snapped, shifted, tried and asked about.

import { axesOf, drawing, fittingAt, inVan, lineOf, sheet, viewOf, type View } from "./drawing";
import { Marks } from "./marks";
import { Motion } from "./motion";
import * as paper from "./paper";
import { current as selected, select } from "./selection";
import { snap, type Caught } from "./snap";
import type { Faces } from "./wire";

const threshold = 4; // px before a press becomes a drag
const pull = 15; // mm from which a face catches, at the drawing's whole size
const leastPull = 3; // px: nearer no hand can aim

interface Drag {
	readonly pointer: number;
	readonly id: string;
	readonly view: View;
	readonly from: PointerEvent;
	readonly again: boolean; // it was selected before the press
	at: PointerEvent;
	frame: number;
	readonly mm: number; // of the sheet for a pixel: asked once, since it makes the browser lay out the page
	motion?: Motion;
	marks?: Marks;
}

let drag: Drag | undefined;
let tapping: PointerEvent | undefined; // a press that may yet be a tap

export function begin(): void {
	const on = sheet();
	if (!on) return;
	on.addEventListener("pointerdown", press);
	on.addEventListener("pointermove", move);
	on.addEventListener("pointerup", lift);
	on.addEventListener("pointercancel", (e) => e.pointerId === drag?.pointer && cancel());
	document.addEventListener("keydown", (e) => {
		if (e.key !== "Escape" || !drag) return;
		e.preventDefault();
		cancel();
	});
	// A page that scrolls under the finger would take the drag away.
	const hold = (e: TouchEvent) => e.touches.length === 1 && grip(e.touches[0]!) === selected() && selected() && e.preventDefault();
	on.addEventListener("touchstart", hold, { passive: false });
}

/** Whether a drag is under way, so that the paper stays where it is. */
export const underWay = (): boolean => drag?.motion !== undefined;

interface Place {
	readonly clientX: number;
	readonly clientY: number;
}

/** The fittings at a place of the window, the topmost first. */
function pile(at: Place): string[] {
	const ids = document.elementsFromPoint(at.clientX, at.clientY).map(fittingAt);
	return [...new Set(ids)].filter((id) => id !== undefined);
}

/** What a press takes hold of: the selected fitting wherever it is under the pointer, else what lies on top. */
function grip(at: Place): string | undefined {
	const under = pile(at);
	const own = selected();
	return own && under.includes(own) ? own : under[0];
}

/** What lies next below a fitting; after the lowest the topmost again. */
function nextBelow(id: string, at: Place): string | undefined {
	const under = pile(at);
	return under[(under.indexOf(id) + 1) % under.length];
}

function press(e: PointerEvent): void {
	tapping = e.isPrimary && e.button === 0 ? e : undefined;
	if (drag || e.button !== 0 || !e.isPrimary) {
		if (drag && !e.isPrimary) cancel(); // a second finger moves the paper
		return;
	}
	const id = grip(e);
	const view = viewOf(e.target as Element);
	if (!id || !view) return;
	const touch = e.pointerType === "touch";
	if (touch && id !== selected()) return; // a tap selects first
	drag = { pointer: e.pointerId, id, view, from: e, again: id === selected(), at: e, frame: 0, mm: paper.pixel() };
	choose(id, touch);
	if (!touch) e.preventDefault();
}

/** Selects a fitting; with the mouse its line gets the focus, so that keys go on from there. */
function choose(id: string | undefined, touch: boolean): void {
	select(id);
	if (id && !touch) lineOf(id)?.focus({ preventScroll: true });
}

function move(e: PointerEvent): void {
	if (e.pointerId !== drag?.pointer) return;
	drag.at = e;
	if (!drag.motion) {
		if (apart(e, drag.from) < threshold) return;
		start(drag);
	}
	drag.frame ||= requestAnimationFrame(frame);
}

function start(d: Drag): void {
	drawing()?.setPointerCapture(d.pointer);
	performance.clearMeasures("drag");
	const marks = (d.marks = new Marks(d.id, d.view, 1 / paper.nearness()));
	d.motion = new Motion(d.id);
	d.motion.onSwap = () => marks.lay();
	document.body.classList.add("is-dragging");
}

/** One step of a drag, measured: its time is what dragging feels like. */
function frame(): void {
	if (!drag?.motion) return;
	const begun = performance.now();
	drag.frame = 0;
	follow(drag, drag.motion);
	performance.measure("drag", { start: begun });
}

function follow(d: Drag, motion: Motion): void {
	const wanted = inVan(d.view, (d.at.clientX - d.from.clientX) * d.mm, (d.at.clientY - d.from.clientY) * d.mm);
	const axes = axesOf[d.view.name];
	const tolerance = Math.max(pull / paper.nearness(), (leastPull * d.mm) / d.view.scale);
	const free = d.at.altKey || !motion.trial;
	const { shift, caught } = free ? { shift: whole(wanted), caught: [] as const } : snap(motion.trial!, wanted, axes, tolerance);
	d.marks?.show(shift, caught);
	if (shift.dx !== motion.shift.dx || shift.dy !== motion.shift.dy || shift.dz !== motion.shift.dz) motion.to(shift, 0, facesOf(motion, caught));
}

/** What the document may say it stands against. Upon or in a carrier the room's words mean the carrier's own faces, so they are left out. */
function facesOf(motion: Motion, caught: readonly Caught[]): Faces {
	const carried = motion.trial?.carried ?? false;
	const named = caught.filter((c) => c.against && !(carried && !c.face.includes(".")));
	return Object.fromEntries(named.map((c) => [c.axis, c.face]));
}

const apart = (a: PointerEvent, b: PointerEvent) => Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);

const whole = (s: { dx: number; dy: number; dz: number }) => ({ dx: Math.round(s.dx), dy: Math.round(s.dy), dz: Math.round(s.dz) });

function lift(e: PointerEvent): void {
	if (e.pointerId !== drag?.pointer) {
		tap(e);
		return;
	}
	const { motion, again, id } = drag;
	if (motion) {
		drag.at = e;
		follow(drag, motion);
	} else if (again) {
		choose(nextBelow(id, e), e.pointerType === "touch"); // a second press in one place means what lies below
	}
	end();
	void motion?.drop();
}

/** A tap selects what is under the finger, or nothing. */
function tap(e: PointerEvent): void {
	const from = tapping;
	if (e.pointerId === from?.pointerId && apart(e, from) < threshold) select(fittingAt(e.target as Element));
}

function cancel(): void {
	const motion = drag?.motion;
	end();
	motion?.cancel();
}

function end(): void {
	if (!drag) return;
	cancelAnimationFrame(drag.frame);
	drag.marks?.remove();
	drag = undefined;
	document.body.classList.remove("is-dragging");
}
