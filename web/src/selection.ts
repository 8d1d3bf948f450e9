// Which fittings are chosen: one or several, the same on the drawing and in the list. The last one is what fields and handles mean.

import { groupsOf, lineOf } from "./drawing";
import * as kits from "./kits";
import { afterSwap } from "./regions";

let chosen: readonly string[] = [];
let kept: readonly string[] = []; // of the keyboard's: these stay chosen while the focus goes on

const hearers = new Set<() => void>();

/** The fitting chosen last. */
export const current = (): string | undefined => chosen.at(-1);

/** All that is chosen, in the order of choosing. */
export const all = (): readonly string[] => chosen;

/** Hears of every change of what is chosen. */
export function whenChosen(then: () => void): void {
	hearers.add(then);
}

export function select(id: string | undefined): void {
	kept = [];
	choose(id ? [id] : []);
}

/** Chooses several. What stands in or upon another of them goes along with that one anyway, and is left out. */
export function selectAll(ids: readonly string[]): void {
	kept = [];
	choose(outermost(ids));
}

/** Adds one to what is chosen, or takes it out. */
export function toggle(id: string): void {
	selectAll(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id]);
}

/** Keeps a fitting chosen while the focus goes on through the list, or lets it go; whether it is kept now. */
export function keep(id: string): boolean {
	kept = kept.includes(id) ? kept.filter((one) => one !== id) : [...kept, id];
	choose([...kept.filter((one) => one !== id), id]);
	return kept.includes(id);
}

function outermost(ids: readonly string[]): string[] {
	const within = (id: string): boolean => {
		for (let line = lineOf(id)?.parentElement?.closest<HTMLElement>("[data-fitting]"); line; line = line.parentElement?.closest<HTMLElement>("[data-fitting]")) {
			if (ids.includes(line.dataset["fitting"]!)) return true;
		}
		return false;
	};
	return [...new Set(ids)].filter((id) => !within(id));
}

function choose(ids: readonly string[]): void {
	for (const id of chosen) if (!ids.includes(id)) mark(id, false);
	chosen = ids;
	for (const id of chosen) mark(id, true);
	if (chosen.length > 0) void kits.bring();
	for (const then of hearers) then();
}

function mark(id: string, is: boolean): void {
	for (const g of groupsOf(id)) g.classList.toggle("is-selected", is);
	const line = lineOf(id);
	line?.classList.toggle("is-selected", is);
	if (is) line?.setAttribute("aria-current", "true");
	else line?.removeAttribute("aria-current");
	if (is && line) unfold(line);
}

/** Opens what a thing is folded under in the list, so that its line can be seen and take the focus. */
function unfold(line: Element): void {
	for (let fold = line.parentElement?.closest("details"); fold; fold = fold.parentElement?.closest("details")) fold.open = true;
}

const carried = "chosen"; // in the tab's own store

/** What was chosen in another mode stays chosen in this one. */
export function restore(): void {
	const ids = sessionStorage.getItem(carried)?.split(" ") ?? [];
	sessionStorage.removeItem(carried);
	const there = ids.filter((id) => lineOf(id));
	if (there.length > 0) selectAll(there);
	document.addEventListener("click", (e) => {
		if ((e.target as Element).closest(".modes a, .elsewhere a")) sessionStorage.setItem(carried, chosen.join(" "));
	});
}

/** Keeps what is chosen through swaps, and follows the focus in the list. What was taken out is chosen no more. */
export function begin(): void {
	afterSwap((region) => {
		const there = region === "fittings" ? chosen.filter((id) => lineOf(id)) : chosen;
		choose(there);
	});
	document.addEventListener("focusin", (e) => {
		const id = (e.target as Element).closest<HTMLElement>(".fittings [data-fitting]")?.dataset["fitting"];
		if (!id || id === current()) return;
		if (chosen.includes(id) && kept.length === 0) choose([...chosen.filter((one) => one !== id), id]);
		else choose([...kept.filter((one) => one !== id), id]);
	});
}
