// Taking hold of the handles of the one fitting that is chosen, to stretch it or to turn it.

import { drawing, faceOnSheet, groupsOf, inVan, sheet, svgElement, views, type View, type ViewName } from "./drawing";
import { gapsOf } from "./gaps";
import { cover, uncover } from "./glass";
import { boxAbout, drawn, gripsOf, type Grip } from "./handles";
import type { KitFitting } from "./kit";
import * as kits from "./kits";
import { Marks } from "./marks";
import * as measure from "./measure";
import * as motions from "./motion";
import { Motion } from "./motion";
import * as paper from "./paper";
import { sayWhy } from "./refusals";
import { afterSwap } from "./regions";
import { all as chosen, whenChosen } from "./selection";
import { axes, axisOf, stretched, turned, type Pull } from "./shape";
import { snapFace, type Caught } from "./snap";
import * as shifts from "./shifts";
import * as strip from "./strip";

const detent = 15; // degrees
const pull = 15; // mm from which a face catches, at the drawing's whole size
const leastPull = 3; // px

const layer = svgElement("g", { class: "grips", "data-keep": "", "aria-hidden": "true" });
let view: ViewName = "plan"; // where the pointer was last

export function begin(): void {
	const on = sheet();
	if (!on) return;
	on.addEventListener("pointerdown", (e) => {
		const pressed = views().find((v) => v.element.contains(e.target as Element));
		if (pressed && pressed.name !== view) {
			view = pressed.name;
			lay();
		}
	}, { capture: true });
	layer.addEventListener("touchstart", (e) => e.preventDefault(), { passive: false });
	whenChosen(lay);
	kits.whenCame(lay);
	paper.whenShown(lay);
	measure.whenUsed(lay);
	motions.whenMoving(lay);
	afterSwap((region) => region === "drawing" && lay());
}

/** Puts the handles where the chosen fitting is, or takes them away. */
function lay(): void {
	if (hold || taking) return;
	const ids = chosen();
	const kit = ids.length > 0 && !motions.current() && !shifts.unsettled() && !measure.on() ? kits.current() : undefined;
	const all = kit?.fittings.filter((f) => ids.includes(f.id)) ?? [];
	const [f] = all;
	const v = shownView();
	layer.classList.remove("is-held");
	if (!f || !v) layer.replaceChildren();
	else if (all.length > 1) layer.replaceChildren(boxAbout(all));
	else layer.replaceChildren(...outlineOf(f, v), ...(f.locked ? [] : gripsOf(f, v).map((g) => drawn(g, f, v, (e) => press(e, g, f, v)))));
	if (f && layer.parentNode !== drawing()) drawing()?.append(layer);
}

/** The outline of what is chosen, above all else: it may lie under another thing. One that is turned has its own where it is drawn. */
function outlineOf(f: KitFitting, v: View): SVGElement[] {
	const skew = (f.turn ?? 0) % 90 !== 0;
	return skew && groupsOf(f.id).some((g) => v.element.contains(g)) ? [] : [boxAbout([f])];
}

/** The view the handles are in: the one the pointer was in last, or the only one there is on a phone. */
function shownView(): View | undefined {
	const on = sheet();
	const only = (["plan", "side", "cross"] as const).find((name) => on?.classList.contains(`is-only-${name}`));
	const all = views();
	return all.find((v) => v.name === (only ?? view)) ?? all[0];
}

interface Hold {
	readonly from: PointerEvent;
	readonly grip: Grip;
	readonly fitting: KitFitting;
	readonly view: View;
	readonly motion: Motion;
	readonly marks: Marks;
	readonly mm: number;
	at: PointerEvent;
	frame: number;
}

let hold: Hold | undefined;
let taking = false; // a handle is being taken hold of: it stays where it is

/** Whether a handle is held. */
export const underWay = (): boolean => hold !== undefined;

function press(e: PointerEvent, grip: Grip, fitting: KitFitting, v: View): void {
	e.stopPropagation();
	e.preventDefault();
	if (e.button !== 0 || !e.isPrimary || hold) return;
	if (grip.why) {
		sayWhy(fitting.id, grip.why);
		return;
	}
	const look = e.target instanceof Element ? getComputedStyle(e.target).cursor.replace(/^grab$/, "grabbing") : undefined;
	const marks = new Marks([fitting.id], v, 1 / paper.nearness());
	marks.lay();
	taking = true;
	const motion = new Motion([fitting.id]);
	taking = false;
	motion.onSwap = () => marks.lay();
	hold = { from: e, at: e, grip, fitting, view: v, motion, marks, mm: paper.pixel(), frame: 0 };
	performance.clearMeasures("drag");
	layer.classList.add("is-held"); // taken out, the element under a finger would end its touch
	drawing()?.setPointerCapture(e.pointerId);
	document.body.classList.add("is-dragging");
	cover(e, look);
	for (const [name, then] of listeners) window.addEventListener(name, then as EventListener, { capture: true }); // before the keys, to which Escape means something else
}

const listeners = [["pointermove", move], ["pointerup", lift], ["pointercancel", cancel], ["pointerdown", second], ["keydown", key]] as const;

function move(e: PointerEvent): void {
	if (!hold || e.pointerId !== hold.from.pointerId) return;
	hold.at = e;
	strip.keepAwayFrom(e.clientY);
	hold.frame ||= requestAnimationFrame(frame);
}

function frame(): void {
	if (!hold) return;
	const begun = performance.now();
	hold.frame = 0;
	follow(hold);
	performance.measure("drag", { start: begun });
}

function follow(h: Hold): void {
	if (h.grip.faces.length === 0) followTurn(h);
	else followPull(h);
}

function followPull(h: Hold): void {
	const wanted = inVan(h.view, (h.at.clientX - h.from.clientX) * h.mm, (h.at.clientY - h.from.clientY) * h.mm);
	const by = { x: wanted.dx, y: wanted.dy, z: wanted.dz };
	const tolerance = Math.max(pull / paper.nearness(), (leastPull * h.mm) / h.view.scale);
	const trial = h.motion.trial;
	const pulls: Pull[] = [];
	const caught: Caught[] = [];
	for (const face of h.grip.faces) {
		const want = by[axisOf(face)];
		const found = trial ? snapFace(trial, h.fitting, face, want, tolerance, h.at.altKey) : { pull: { face, by: Math.round(want) } };
		pulls.push(found.pull);
		if ("caught" in found && found.caught) caught.push(found.caught);
	}
	const shape = stretched(h.fitting, pulls);
	const size = h.grip.faces.map((face) => mm(shape.max[axes.indexOf(axisOf(face))]! - shape.min[axes.indexOf(axisOf(face))]!));
	show(h, shape, size.join(" × "));
	h.marks.guide(caught);
	if (trial) h.marks.gaps(gapsOf(trial, shape, h.grip.faces.map(axisOf)));
	h.motion.to({ pulls });
}

function followTurn(h: Hold): void {
	const centre = { x: (h.fitting.min[0] + h.fitting.max[0]) / 2, y: (h.fitting.min[1] + h.fitting.max[1]) / 2 };
	const [x, y] = [faceOnSheet(h.view, "x", centre.x)!.at, faceOnSheet(h.view, "y", centre.y)!.at];
	const angleAt = (e: PointerEvent) => {
		const p = paper.onPaper(e.clientX, e.clientY);
		return (Math.atan2(p.y - y, p.x - x) * 180) / Math.PI;
	};
	const began = (Math.atan2(h.grip.y - y, h.grip.x - x) * 180) / Math.PI;
	const step = h.at.altKey ? 1 : detent;
	const before = h.fitting.turn ?? 0;
	const now = Math.round((before + -h.view.down * (angleAt(h.at) - began)) / step) * step;
	const by = ((((now - before + 180) % 360) + 360) % 360) - 180;
	show(h, turned(h.fitting, by), `${(((before + by) % 360) + 360) % 360}°`);
	h.motion.to({ turn: by });
}

function show(h: Hold, shape: KitFitting, value: string): void {
	const p = paper.onPaper(h.at.clientX, h.at.clientY);
	h.marks.reshape(shape, value, p.x, p.y - 14 * h.mm);
}

const mm = (v: number): string => String(Math.round(v)).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

function lift(e: PointerEvent): void {
	if (!hold || e.pointerId !== hold.from.pointerId) return;
	hold.at = e;
	if (apart(e, hold.from) > 1) follow(hold);
	const { motion, marks } = hold;
	end();
	marks.rest();
	void motion.drop().finally(() => {
		marks.remove();
		lay();
	});
}

const apart = (a: PointerEvent, b: PointerEvent) => Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);

function cancel(): void {
	const h = hold;
	end();
	h?.motion.cancel();
	h?.marks.remove();
	lay();
}

/** A second finger moves the paper. */
function second(e: PointerEvent): void {
	if (hold && e.pointerId !== hold.from.pointerId) cancel();
}

function key(e: KeyboardEvent): void {
	if (e.key !== "Escape") return;
	e.preventDefault();
	cancel();
}

function end(): void {
	if (hold) cancelAnimationFrame(hold.frame);
	hold = undefined;
	document.body.classList.remove("is-dragging");
	uncover();
	for (const [name, then] of listeners) window.removeEventListener(name, then as EventListener, { capture: true });
}
