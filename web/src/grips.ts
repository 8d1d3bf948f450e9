// Handles on the edges and corners of the one fitting that is chosen, and one that turns it. What does not stretch or turn has a handle
// too: it says why.

import { axesOf, drawing, faceOnSheet, inVan, sheet, svgElement, views, type View, type ViewName } from "./drawing";
import { gapsOf } from "./gaps";
import { join } from "./geometry";
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
import { axes, axisOf, stretched, turned, whyFixed, type FaceName, type Pull } from "./shape";
import { faceOn, snapFace, type Caught } from "./snap";
import * as shifts from "./shifts";

const target = matchMedia("(pointer: coarse)").matches ? 36 : 24; // px
const mark = 8; // px
const close = 64; // px: a smaller box has its handles outside, so that it can still be taken hold of
const aside = 14; // px that they stand outside then
const stem = 42; // px from the box to the handle that turns it
const detent = 15; // degrees
const pull = 15; // mm from which a face catches, at the drawing's whole size
const leastPull = 3; // px

const layer = svgElement("g", { class: "grips", "data-keep": "", "aria-hidden": "true" });
let view: ViewName = "plan"; // where the pointer was last

/** A handle: where it is on the sheet, and what it does. */
interface Grip {
	readonly x: number;
	readonly y: number;
	readonly faces: readonly FaceName[]; // none: it turns
	readonly why: string | undefined; // it stays as it is
	readonly edge?: number; // of the box, where the stem of a turning handle begins
}

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
	else layer.replaceChildren(...(f.locked ? [] : gripsOf(f, v).map((g) => drawn(g, f, v))));
	if (f && layer.parentNode !== drawing()) drawing()?.append(layer);
}

/** The box about several, in every view. */
function boxAbout(all: readonly KitFitting[]): SVGElement {
	const { min, max } = join(all);
	const d = views().map((v) => {
		const [across, along] = axesOf[v.name];
		const at = (axis: typeof across, corner: readonly number[]) => faceOnSheet(v, axis, corner[axes.indexOf(axis)]!)!.at.toFixed(2);
		return `M${at(across, min)} ${at(along, min)}H${at(across, max)}V${at(along, max)}H${at(across, min)}Z`;
	});
	return svgElement("path", { class: "about", d: d.join("") });
}

/** The view the handles are in: the one the pointer was in last, or the only one there is on a phone. */
function shownView(): View | undefined {
	const on = sheet();
	const only = (["plan", "side", "cross"] as const).find((name) => on?.classList.contains(`is-only-${name}`));
	const all = views();
	return all.find((v) => v.name === (only ?? view)) ?? all[0];
}

function gripsOf(f: KitFitting, v: View): Grip[] {
	const px = paper.pixel();
	const [across, along] = axesOf[v.name];
	const at = (axis: typeof across, high: boolean) => faceOnSheet(v, axis, (high ? f.max : f.min)[axes.indexOf(axis)]!)!.at;
	const sides = [false, true];
	const [wide, high] = [Math.abs(at(across, true) - at(across, false)) / px, Math.abs(at(along, true) - at(along, false)) / px];
	const small = Math.min(wide, high) < close;
	const out = (low: number, top: number, isHigh: boolean) => (small ? aside * px * (isHigh === top > low ? 1 : -1) : 0);
	const x = (isHigh: boolean) => at(across, isHigh) + out(at(across, false), at(across, true), isHigh);
	const y = (isHigh: boolean) => at(along, isHigh) + out(at(along, false), at(along, true), isHigh);
	const middle = { x: (at(across, false) + at(across, true)) / 2, y: (at(along, false) + at(along, true)) / 2 };
	const why = (...faces: FaceName[]) => faces.map((face) => whyFixed(f, face)).find((one) => one !== undefined);
	const grips: Grip[] = [
		...sides.map((h) => ({ x: x(h), y: middle.y, faces: [faceOn(across, h)], why: why(faceOn(across, h)) })),
		...sides.map((h) => ({ x: middle.x, y: y(h), faces: [faceOn(along, h)], why: why(faceOn(along, h)) })),
	];
	if (!small) for (const a of sides) for (const b of sides) {
		const faces = [faceOn(across, a), faceOn(along, b)];
		if (!why(...faces)) grips.push({ x: x(a), y: y(b), faces, why: undefined });
	}
	if (v.name === "plan") grips.push(turnGrip(f, v, [at(across, false), at(across, true)], [at(along, false), at(along, true)]));
	return grips;
}

/** The handle that turns stands off the box towards the middle of the van, beside the handle of that edge. */
function turnGrip(f: KitFitting, v: View, x: readonly [number, number], y: readonly [number, number]): Grip {
	const middle = (y[0] + y[1]) / 2;
	const down = middle < v.originY ? 1 : -1;
	const edge = down > 0 ? Math.max(...y) : Math.min(...y);
	return { x: x[0] + 0.75 * (x[1] - x[0]), y: edge + down * stem * paper.pixel(), faces: [], why: f.noTurn, edge };
}

/** A handle is drawn small and taken hold of within a larger square. */
function drawn(g: Grip, f: KitFitting, v: View): SVGGElement {
	const px = paper.pixel();
	const round = g.faces.length === 0;
	const group = svgElement("g", { class: `grip${g.why ? " is-fixed" : ""}`, "data-grip": round ? "turn" : g.faces.join(" ") });
	group.classList.add(round ? "turns" : g.faces.length === 2 ? cornerOf(g, f, v) : axesOf[v.name][0] === axisOf(g.faces[0]!) ? "across" : "along");
	const square = (size: number, name: string, corner = 0) => svgElement("rect", {
		class: name, x: String(g.x - (size * px) / 2), y: String(g.y - (size * px) / 2), width: String(size * px), height: String(size * px), rx: String(corner * px),
	});
	if (g.edge !== undefined) group.append(svgElement("path", { class: "stem", d: `M${g.x} ${g.edge}V${g.y}` }));
	group.append(square(target, "target"), g.why ? crossed(g, px) : square(mark, "mark", round ? mark / 2 : 1));
	const title = svgElement("title");
	title.textContent = g.why ?? (round ? "turn it" : `move its ${g.faces.join(" and ")}`);
	group.append(title);
	group.addEventListener("pointerdown", (e) => press(e, g, f, v));
	return group;
}

/** What does not move has a small cross instead of a square. */
function crossed(g: Grip, px: number): SVGElement {
	const r = 3 * px;
	return svgElement("path", { class: "cross", d: `M${g.x - r} ${g.y - r}l${2 * r} ${2 * r}M${g.x - r} ${g.y + r}l${2 * r} ${-2 * r}` });
}

/** Which way a corner is pulled on the sheet. */
function cornerOf(g: Grip, f: KitFitting, v: View): string {
	const [across, along] = axesOf[v.name];
	const middle = (axis: typeof across) => faceOnSheet(v, axis, (f.min[axes.indexOf(axis)]! + f.max[axes.indexOf(axis)]!) / 2)!.at;
	return (g.x < middle(across)) === (g.y < middle(along)) ? "falling" : "rising";
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
	const marks = new Marks([fitting.id], v, 1 / paper.nearness());
	taking = true;
	const motion = new Motion([fitting.id]);
	taking = false;
	motion.onSwap = () => marks.lay();
	hold = { from: e, at: e, grip, fitting, view: v, motion, marks, mm: paper.pixel(), frame: 0 };
	performance.clearMeasures("drag");
	layer.classList.add("is-held"); // taken out, the element under a finger would end its touch
	drawing()?.setPointerCapture(e.pointerId);
	document.body.classList.add("is-dragging");
	for (const [name, then] of listeners) window.addEventListener(name, then as EventListener);
}

const listeners = [["pointermove", move], ["pointerup", lift], ["pointercancel", cancel], ["pointerdown", second], ["keydown", key]] as const;

function move(e: PointerEvent): void {
	if (!hold || e.pointerId !== hold.from.pointerId) return;
	hold.at = e;
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
	for (const [name, then] of listeners) window.removeEventListener(name, then as EventListener);
}
