// The line above the drawing: what is chosen, and what can be done with it; the tools for choosing and measuring; the keys.

import { linedUp, spacedOut, type Line } from "./arrange";
import { lineOf, mode, nameOf, sheet, svgElement } from "./drawing";
import * as edits from "./edits";
import type { Shift } from "./geometry";
import { keysList } from "./keys";
import type { Axis, KitFitting } from "./kit";
import * as kits from "./kits";
import * as marquee from "./marquee";
import * as measure from "./measure";
import { Motion } from "./motion";
import { refusesMove, refusesTurn, say } from "./refusals";
import { newest, refresh } from "./regions";
import { confirm } from "./removal";
import { all as chosen, current, selectAll, whenChosen } from "./selection";
import { axes } from "./shape";

const narrow = window.matchMedia("(max-width: 640px)");
const bar = document.createElement("div");
const words = document.createElement("p");
const one = group("What is chosen");
const many = group("Line up and space out");
const keys = keysList();
const ruler = document.createElement("div");
const putting = document.createElement("div"); // where what has no place may go
const asking = document.createElement("div"); // where it is asked whether to take something out

export function begin(): void {
	if (!sheet()) return;
	bar.className = "hand";
	words.className = "what";
	ruler.className = "ruler";
	one.append(
		button("another one", "Another one like it (Ctrl+D)", () => void duplicate(), "duplicate"),
		button("turn", "Turn by a quarter (R)", turn, "turn"),
		button("lock", "Lock where it is (L)", () => void lock(), "lock"),
		button("take out", "Take out (Delete)", takeOut, "take-out"),
	);
	many.append(...lines.map(([path, label, line]) => icon(path, label, () => void lineUp(line))), ...spaces.map(([path, label, axis]) => icon(path, label, () => void spaceOut(axis))));
	const tools = group("Tools");
	tools.classList.add("tools");
	const frame = button("frame", "Choose several by a frame", () => marquee.arm(!marquee.on()), "frame");
	const tape = button("measure", "Measure between two points (M)", () => measure.use(!measure.on()), "measure");
	const help = button("?", "The keys", () => showKeys(), "keys");
	tools.append(button("undo", "Take the last change back", () => void edits.undo(), "undo"), button("redo", "Bring it back", () => void edits.redo(), "redo"), frame, tape, help);
	for (const b of [frame, tape, help]) b.setAttribute("aria-pressed", "false");
	marquee.whenArmed(() => frame.setAttribute("aria-pressed", String(marquee.on())));
	measure.whenUsed(() => {
		tape.setAttribute("aria-pressed", String(measure.on()));
		steady(() => ruler.replaceChildren(...(measure.on() ? [hint("Press two points, or choose two things:"), measure.betweenTwo()] : [])));
	});
	bar.append(words, one, many, tools);
	sheet()!.before(bar, putting, asking, ruler, keys);
	whenChosen(() => steady(show));
	kits.whenCame(() => steady(show));
	show();
}

/** Changes the bar and keeps the drawing where it is in the window, under the finger that pressed it. */
function steady(change: () => void): void {
	const before = sheet()?.getBoundingClientRect().top ?? 0;
	change();
	const moved = (sheet()?.getBoundingClientRect().top ?? 0) - before;
	if (moved !== 0) window.scrollBy(0, moved);
}

/** Shows the list of keys, or hides it. */
export function showKeys(): void {
	keys.hidden = !keys.hidden;
	bar.querySelector("[data-act=keys]")?.setAttribute("aria-pressed", String(!keys.hidden));
}

function hint(text: string): HTMLElement {
	const p = document.createElement("p");
	p.textContent = text;
	return p;
}

function group(label: string): HTMLElement {
	const g = document.createElement("div");
	g.className = "acts";
	g.setAttribute("role", "group");
	g.setAttribute("aria-label", label);
	return g;
}

function button(text: string, label: string, press: () => void, act: string): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.textContent = text;
	b.title = label;
	b.dataset["act"] = act;
	b.addEventListener("click", press);
	return b;
}

function icon(path: string, label: string, press: () => void): HTMLButtonElement {
	const b = button("", label, press, label.toLowerCase().replaceAll(" ", "-"));
	const svg = svgElement("svg", { viewBox: "0 0 16 16", "aria-hidden": "true" });
	svg.append(svgElement("path", { d: path }));
	b.setAttribute("aria-label", label);
	b.append(svg);
	return b;
}

const lines: readonly (readonly [string, string, Line])[] = [
	["M2.5 1v14M5 4h8v3H5zM5 9.500h5v3H5z", "Fronts in line", { axis: "x", at: "low" }],
	["M8 1v2.500M8 7v2M8 12.500V15M3 3.500h10v3.500H3zM5 9h6v3.500H5z", "Middles in line along", { axis: "x", at: "middle" }],
	["M13.500 1v14M3 4h8v3H3zM6 9.500h5v3H6z", "Rears in line", { axis: "x", at: "high" }],
	["M1 13.500h14M4 3h3v8H4zM9.500 6h3v5h-3z", "Left sides in line", { axis: "y", at: "low" }],
	["M1 8h2.500M7 8h2M12.500 8H15M3.500 3H7v10H3.500zM9 5h3.500v6H9z", "Middles in line across", { axis: "y", at: "middle" }],
	["M1 2.500h14M4 5h3v8H4zM9.500 5h3v5h-3z", "Right sides in line", { axis: "y", at: "high" }],
	["M1 14.500h14M2.500 14.500v-3M13.500 14.500v-3M5 4h6v7H5z", "Undersides in line", { axis: "z", at: "low" }],
	["M1 1.500h14M2.500 1.500v3M13.500 1.500v3M5 5h6v7H5z", "Tops in line", { axis: "z", at: "high" }],
];

const spaces: readonly (readonly [string, string, Axis])[] = [
	["M1 2v12M15 2v12M6 4.500h4v7H6zM1.500 8H5M11 8h3.500", "Even spaces along", "x"],
	["M2 1h12M2 15h12M4.500 6h7v4h-7zM8 1.500V5M8 11v3.500", "Even spaces across", "y"],
];

const mm = (v: number): string => String(Math.round(v)).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

function show(): void {
	const ids = chosen();
	const f = kitted()[0];
	one.hidden = ids.length === 0 && !narrow.matches; // on a phone they keep their room, so that the drawing stays where it is
	for (const b of one.querySelectorAll("button")) b.disabled = ids.length === 0;
	many.hidden = ids.length < 2;
	bar.classList.toggle("has-many", ids.length > 1);
	const size = f && ids.length === 1 ? ` ${axes.map((_, i) => mm(f.max[i]! - f.min[i]!)).join(" × ")} mm${f.turn ? `, turned ${f.turn}°` : ""}${f.locked ? ", locked" : ""}` : "";
	const name = document.createElement("b");
	name.textContent = ids.length === 0 ? "" : ids.length === 1 ? nameOf(ids[0]!) : `${ids.length} things`;
	words.replaceChildren(...(ids.length === 0 ? ["Press a thing on the drawing or in the list to choose it."] : [name, size]));
	offerSpots(ids.length === 1 ? ids[0]! : "");
	const lock = one.querySelector<HTMLButtonElement>("[data-act=lock]")!;
	lock.textContent = kitted().some((k) => k.locked) ? "unlock" : "lock";
	for (const b of many.querySelectorAll<HTMLButtonElement>("[data-act^=even]")) b.disabled = ids.length < 3;
}

/** What waits without a place can be put somewhere here too, not only in its line: what is chosen, else the first of all that wait. */
function offerSpots(chosen: string): void {
	const waiting = [...document.querySelectorAll<HTMLElement>(".fittings form.spots")];
	const form = lineOf(chosen)?.querySelector<HTMLElement>(":scope > form.spots") ?? waiting[0];
	const id = form?.closest<HTMLElement>("[data-fitting]")?.dataset["fitting"] ?? "";
	const others = waiting.length > 1 ? ` (${waiting.length - 1} more in the list)` : "";
	if (putting.dataset["of"] === id + others) return; // the focus may be in it
	putting.dataset["of"] = id + others;
	const copy = form?.cloneNode(true) as HTMLElement | undefined;
	copy?.setAttribute("aria-label", `Put ${nameOf(id)}, which has no place yet`);
	const says = copy?.querySelector(".name");
	if (says) says.textContent = `${nameOf(id)} stands nowhere yet${others}: put it`;
	putting.replaceChildren(...(copy ? [copy] : []));
}

/** What is chosen, as the kit knows it. */
function kitted(): KitFitting[] {
	const kit = kits.current();
	return chosen().flatMap((id) => kit?.fittings.find((f) => f.id === id) ?? []);
}

/** Puts another one beside each that is chosen, and chooses the new ones. */
export async function duplicate(): Promise<void> {
	const ids = [...chosen()].sort();
	if (ids.length === 0) return;
	const saved = edits.save(`/fittings/${ids.join(",")}/duplicate`, (revision) => new URLSearchParams({ base: String(revision) }));
	if (!(await edits.told(saved))) return;
	const { made } = await saved;
	await refresh(newest());
	if (made) choose(made);
}

/** Chooses what is new, with the focus on its line, and brings the drawing into the window. */
export function choose(made: readonly string[]): void {
	selectAll(made);
	lineOf(made[0] ?? "")?.focus({ preventScroll: true });
	if (sheet()) bar.scrollIntoView({ block: "nearest" });
}

/** Locks what is chosen; where something is locked already, unlocks it. */
export async function lock(): Promise<void> {
	const ids = chosen();
	if (ids.length === 0) return;
	const locked = kitted().some((f) => f.locked);
	await edits.told(edits.save("/edit", (revision) => {
		const form = new URLSearchParams({ base: String(revision), words: `${ids.length === 1 ? nameOf(ids[0]!) : `${ids.length} things`} ${locked ? "unlocked" : "locked"}` });
		for (const id of ids) {
			form.append("path", `/fittings/${id}/locked`);
			form.append("value", locked ? "" : "yes");
		}
		return form;
	}));
	await kits.bring();
}

function turn(): void {
	if (refusesMove(chosen()) || refusesTurn(chosen())) return;
	const motion = new Motion(chosen());
	motion.to({ turn: 90 });
	void motion.drop();
}

function takeOut(): void {
	const line = lineOf(current() ?? "");
	if (line) askToTakeOut(line);
}

/** Asks in the line where that is in the window, else beside the drawing, which stays where it is. */
export function askToTakeOut(line: HTMLElement): void {
	const { top, bottom } = line.getBoundingClientRect();
	const seen = top >= 0 && top < window.innerHeight && bottom - top > 0;
	if (seen || bar.getBoundingClientRect().bottom < 0) confirm(line, chosen());
	else confirm(line, chosen(), { at: asking, changed: steady });
}

const lineUp = (line: Line) => arrange((all) => linedUp(all, line));
const spaceOut = (axis: Axis) => arrange((all) => spacedOut(all, axis));

/** Shifts what is chosen, as one change. */
async function arrange(by: (all: readonly KitFitting[]) => Map<string, Shift>): Promise<void> {
	if (refusesMove(chosen())) return;
	const seen = edits.seen();
	const shifts = [...by(kitted())].filter(([, s]) => s.dx !== 0 || s.dy !== 0 || s.dz !== 0);
	if (shifts.length === 0) {
		say("They are so already.");
		return;
	}
	await edits.told(edits.save("/edit", async (revision) => ({
		revision, seen: await seen, mode: mode(), moves: shifts.map(([fitting, s]) => ({ fitting, ...s, turn: 0, snap: {} })),
	})));
	await kits.bring();
}
