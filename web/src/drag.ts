// Dragging a fitting on the drawing. The pointer's place is only noted when it moves; at most once a
// frame the fitting is snapped, shifted, tried and asked about.

import { axesOf, drawing, fittingAt, groupsOf, inVan, lineOf, sheet, viewOf, type View } from "./drawing";
import * as edits from "./edits";
import { gapsOf, moved } from "./gaps";
import type { Shift } from "./geometry";
import { cover, uncover } from "./glass";
import type { Corner, KitFitting } from "./kit";
import * as marquee from "./marquee";
import { Marks } from "./marks";
import * as measure from "./measure";
import { Motion } from "./motion";
import * as paper from "./paper";
import { bedsFirst, next } from "./pile";
import { refusesMove } from "./refusals";
import { all as chosen, select, toggle } from "./selection";
import { snap, type Caught } from "./snap";
import * as strip from "./strip";
import type { Faces } from "./wire";

const threshold = 4; // px before a press becomes a drag
const pull = 15; // mm from which a face catches, at the drawing's whole size
const leastPull = 3; // px: nearer no hand can aim

interface Drag {
	readonly pointer: number;
	readonly id: string;
	readonly view: View;
	readonly from: PointerEvent;
	readonly seen: Promise<number>; // the revision that showed what was pressed
	readonly again: boolean; // it was selected before the press
	at: PointerEvent;
	frame: number;
	readonly mm: number; // of the sheet for a pixel: asked once, since it makes the browser lay out the page
	readonly window: paper.Rect | undefined; // of the page, in which a drawing drawn nearer is seen; none where all of it is
	gone: { x: number; y: number }; // how far the paper went along [mm of the sheet]
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
	const hold = (e: TouchEvent) => e.touches.length === 1 && chosen().includes(grip(e.touches[0]!) ?? "") && e.preventDefault();
	on.addEventListener("touchstart", hold, { passive: false });
}

/** Whether a drag is under way, so that the paper stays where it is. */
export const underWay = (): boolean => drag?.motion !== undefined;

interface Place {
	readonly clientX: number;
	readonly clientY: number;
}

/** The fittings at a place of the window in the order in which presses mean them, the one whose name is printed there before all others. */
function pile(at: Place): string[] {
	const ids = document.elementsFromPoint(at.clientX, at.clientY).map(fittingAt).filter((id) => id !== undefined);
	const named = namedAt(at);
	return [...new Set([...(named === undefined ? [] : [named]), ...bedsFirst(ids, (id) => lineOf(id)?.dataset["bed"])])];
}

/** The fitting whose printed name is at a place. */
function namedAt(at: Place): string | undefined {
	const name = document.elementsFromPoint(at.clientX, at.clientY).find((e) => e.matches(".sheet svg .caption[data-fitting] *"));
	return fittingAt(name ?? null);
}

/** What a press takes hold of: a chosen fitting wherever it is under the pointer, else the first that is meant. */
function grip(at: Place): string | undefined {
	const under = pile(at);
	return under.find((id) => chosen().includes(id)) ?? under[0];
}

function press(e: PointerEvent): void {
	tapping = e.isPrimary && e.button === 0 ? e : undefined;
	if (drag || e.button !== 0 || !e.isPrimary) {
		if (drag && !e.isPrimary) cancel(); // a second finger moves the paper
		return;
	}
	if (measure.on() || paper.held() || marquee.on()) return; // these take the press for themselves
	const id = grip(e);
	const view = viewOf(e.target as Element);
	if (!id || !view) return;
	if (e.shiftKey) {
		e.preventDefault();
		toggle(id);
		if (chosen().includes(id)) lineOf(id)?.focus({ preventScroll: true });
		return;
	}
	const touch = e.pointerType === "touch";
	if (touch && !chosen().includes(id)) return; // a tap selects first
	drag = { pointer: e.pointerId, id, view, from: e, seen: edits.seen(), again: chosen().includes(id), at: e, frame: 0, mm: paper.pixel(), window: paper.seen(), gone: { x: 0, y: 0 } };
	if (!drag.again) choose(id, touch);
	if (!touch) e.preventDefault();
}

/** Selects a fitting, unless it is one of several chosen together; with the mouse its line gets the focus, so that keys go on from there. */
function choose(id: string | undefined, touch: boolean): void {
	select(id);
	if (id && !touch) lineOf(id)?.focus({ preventScroll: true });
}

function move(e: PointerEvent): void {
	if (e.pointerId !== drag?.pointer) return;
	drag.at = e;
	strip.keepAwayFrom(e.clientY);
	if (!drag.motion) {
		if (apart(e, drag.from) < threshold) return;
		start(drag);
	}
	if (drag) drag.frame ||= requestAnimationFrame(frame);
}

function start(d: Drag): void {
	if (refusesMove(chosen())) {
		drag = undefined;
		return;
	}
	drawing()?.setPointerCapture(d.pointer);
	performance.clearMeasures("drag");
	const marks = (d.marks = new Marks(chosen(), d.view, 1 / paper.nearness()));
	marks.lay();
	d.motion = new Motion(chosen(), d.seen);
	d.motion.onSwap = () => marks.lay();
	document.body.classList.add("is-dragging");
	cover(d.from);
}

/** One step of a drag, measured: its time is what dragging feels like. */
function frame(): void {
	if (!drag?.motion) return;
	const begun = performance.now();
	drag.frame = 0;
	const on = alongWith(drag);
	follow(drag, drag.motion);
	performance.measure("drag", { start: begun });
	if (on) drag.frame = requestAnimationFrame(frame);
}

const edge = 24; // px from the edge of what is seen, within which the paper goes along

/** Moves the paper along with a hand at its edge, the faster the nearer; whether it moved. */
function alongWith(d: Drag): boolean {
	if (!d.window) return false;
	const w = d.window;
	const past = (at: number, low: number, room: number) => Math.min(0, at - low - edge) + Math.max(0, at - low - room + edge);
	const pace = (px: number) => Math.max(-edge, Math.min(edge, px)) / 3;
	const before = paper.corner();
	paper.pan(-pace(past(d.at.clientX, w.x, w.width)), -pace(past(d.at.clientY, w.y, w.height)));
	const after = paper.corner();
	d.gone = { x: d.gone.x + after.x - before.x, y: d.gone.y + after.y - before.y };
	return after.x !== before.x || after.y !== before.y;
}

function follow(d: Drag, motion: Motion): void {
	const led = inVan(d.view, (d.at.clientX - d.from.clientX) * d.mm + d.gone.x, (d.at.clientY - d.from.clientY) * d.mm + d.gone.y);
	const wanted = motion.trial?.leashed(led) ?? led;
	const axes = axesOf[d.view.name];
	const tolerance = Math.max(pull / paper.nearness(), (leastPull * d.mm) / d.view.scale);
	const free = d.at.altKey || !motion.trial;
	const { shift, caught } = free ? { shift: motion.trial?.stopped(whole(wanted)) ?? whole(wanted), caught: [] as const } : snap(motion.trial!, wanted, axes, tolerance);
	d.marks?.show(shift);
	const own = motion.trial?.own;
	if (own && groupsOf(own.id).every((g) => g.classList.contains("caption"))) d.marks?.reshape(shifted(own, shift), "", 0, 0); // it stood off the sheet
	d.marks?.guide(caught);
	if (motion.trial) d.marks?.gaps(gapsOf(motion.trial, moved(motion.trial.box, motion.trial.settled(shift)), axes));
	const was = motion.change.shift;
	if (shift.dx !== was.dx || shift.dy !== was.dy || shift.dz !== was.dz) motion.to({ shift, snap: facesOf(caught) });
}

/** The box of a fitting, shifted. */
function shifted(f: KitFitting, s: Shift): KitFitting {
	const to = (c: Corner): Corner => [c[0] + s.dx, c[1] + s.dy, c[2] + s.dz];
	return { ...f, min: to(f.min), max: to(f.max), prisms: [] };
}

/** What the document may say of where it stands. */
function facesOf(caught: readonly Caught[]): Faces {
	return Object.fromEntries(caught.flatMap((c) => (c.rule === undefined ? [] : [[c.axis, c.rule]])));
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
	} else if (again && chosen().length > 1) {
		choose(id, e.pointerType === "touch"); // of several, only this one
	} else if (again) {
		choose(next(pile(e), id, namedAt(e)), e.pointerType === "touch"); // a second press in one place means another thing there
	}
	end();
	void motion?.drop();
}

/** A tap selects what is meant under the finger, or nothing. */
function tap(e: PointerEvent): void {
	const from = tapping;
	if (measure.on() || e.shiftKey || marquee.on()) return;
	if (e.pointerId === from?.pointerId && apart(e, from) < threshold) select(pile(e)[0]);
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
	uncover();
}
