// Buttons for the paper: nearer, farther, the whole sheet; on a narrow window one view at a time.

import { drawing, groupsOf, sheet, views, type ViewName } from "./drawing";
import * as paper from "./paper";
import { afterSwap } from "./regions";
import { current } from "./selection";

const narrow = window.matchMedia("(max-width: 640px)");
const names: readonly (readonly [ViewName, string])[] = [["plan", "plan"], ["side", "side"], ["cross", "across"]];
const room = 6; // mm of the sheet kept above and below a view
const beside = 10; // and at its sides
const air = 1; // and about flags

let only: ViewName = "plan";

export function begin(): void {
	if (!sheet()) return;
	const bar = document.createElement("div");
	bar.className = "paper-tools";
	bar.setAttribute("role", "group");
	bar.setAttribute("aria-label", "The paper");
	bar.append(
		...names.map(([name, words]) => button(words, words, () => turnTo(name), name)),
		button("+", "Nearer", () => nearer(1.5)),
		button("−", "Farther", () => nearer(1 / 1.5)),
		button("whole", "The whole drawing", paper.whole),
	);
	const heading = document.querySelector("main > header");
	if (heading) heading.append(bar);
	else sheet()!.before(bar);
	narrow.addEventListener("change", layOut);
	afterSwap((region) => region === "drawing" && layOut());
	layOut();
}

function button(words: string, label: string, press: () => void, view?: ViewName): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.textContent = words;
	if (label !== words) b.setAttribute("aria-label", label);
	if (view) b.dataset["only"] = view;
	b.addEventListener("click", press);
	return b;
}

/** Nearer to what is chosen if it is in sight, else to the middle of the drawing: the sheet has more below it. */
function nearer(times: number): void {
	const r = seenOf(current()) ?? drawing()!.getBoundingClientRect();
	paper.zoom(times, r.left + r.width / 2, r.top + r.height / 2);
}

/** Where a fitting is on the part of the drawing that is shown. */
function seenOf(id: string | undefined): DOMRect | undefined {
	const on = drawing()!.getBoundingClientRect();
	const all = id === undefined ? [] : groupsOf(id).filter((g) => getComputedStyle(g).visibility !== "hidden").map((g) => g.getBoundingClientRect());
	return all.find((r) => r.width > 0 && r.left < on.right && r.right > on.left && r.top < on.bottom && r.bottom > on.top);
}

function turnTo(name: ViewName): void {
	only = name;
	layOut();
}

/** The part of the sheet that a view takes with the flags of its notes. */
function homeOf(name: ViewName): paper.Rect | undefined {
	const box = views().find((v) => v.name === name)?.element.getBBox();
	if (!box) return undefined;
	const flags = sheet()!.querySelector<SVGGraphicsElement>(`[data-flags="${name}"]`)?.getBBox() ?? box;
	const [left, top] = [Math.min(box.x - beside, flags.x - air), Math.min(box.y - room, flags.y - air)];
	const [right, foot] = [Math.max(box.x + box.width + beside, flags.x + flags.width + air), Math.max(box.y + box.height + room, flags.y + flags.height + air)];
	return { x: left, y: top, width: right - left, height: foot - top };
}

let laid = "";

/** Shows one view on a narrow window, all of them on a wide one; the nearness stays if that is so already. */
function layOut(): void {
	const on = sheet();
	if (!on) return;
	const wanted = narrow.matches ? only : "";
	for (const [name] of names) on.classList.toggle(`is-only-${name}`, wanted === name);
	for (const b of document.querySelectorAll<HTMLElement>("[data-only]")) b.setAttribute("aria-pressed", String(b.dataset["only"] === wanted));
	if (wanted === laid) return;
	laid = wanted;
	paper.setHome(wanted === "" ? undefined : homeOf(wanted));
}
