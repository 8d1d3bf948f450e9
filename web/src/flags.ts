// A margin note, its flag and the fittings it is about light up together, under the pointer or with the focus.

import { fittingAt, groupsOf, lineOf } from "./drawing";
import { unfoldAll } from "./unfold";

const lit = "is-lit";

export function begin(): void {
	for (const enter of ["pointerover", "focusin"] as const) document.addEventListener(enter, (e) => light(e.target));
	document.addEventListener("click", (e) => {
		const flag = (e.target as Element).closest(".sheet .flag[id]");
		if (flag) void noteOf(flag).then(show);
	});
	for (const leave of ["pointerout", "focusout"] as const) document.addEventListener(leave, dark);
}

/** Brings a note into the window and the focus to it. */
function show(note: HTMLElement | undefined): void {
	const fold = note?.parentElement?.closest("details");
	if (fold) fold.open = true;
	note?.scrollIntoView({ block: "nearest" });
	note?.querySelector<HTMLElement>("a[href], button")?.focus({ preventScroll: true });
}

/** The note of a flag; one that the margin left out is fetched. */
async function noteOf(flag: Element): Promise<HTMLElement | undefined> {
	const more = document.getElementById(`note-${flag.id.replace("flag-", "")}`)?.parentElement?.querySelector<HTMLAnchorElement>(":scope > a.unfolds-all");
	if (more) await unfoldAll(more);
	return notesFor(flag)[0];
}

function dark(): void {
	for (const e of document.querySelectorAll(`.${lit}`)) e.classList.remove(lit);
}

function light(on: EventTarget | null): void {
	if (!(on instanceof Element)) return;
	for (const note of notesFor(on)) {
		note.classList.add(lit);
		flagOf(note)?.classList.add(lit);
		for (const id of fittingsOf(note)) for (const e of [...groupsOf(id), lineOf(id)]) e?.classList.add(lit);
	}
}

/** The notes that an element belongs to: its own, its flag's, or those about its fitting. */
function notesFor(e: Element): HTMLElement[] {
	const own = e.closest<HTMLElement>(".note[data-number]");
	if (own) return [own];
	const flag = e.closest(".flag[id]");
	const all = [...document.querySelectorAll<HTMLElement>(".note[data-number]")];
	if (flag) return all.filter((note) => flagOf(note) === flag);
	const id = fittingAt(e) ?? e.closest<HTMLElement>(".fittings [data-fitting]")?.dataset["fitting"];
	return id ? all.filter((note) => fittingsOf(note).includes(id)) : [];
}

const flagOf = (note: HTMLElement): Element | null => document.getElementById(`flag-${note.dataset["number"]}`);

/** The fittings among what a note is about: pointers such as /fittings/settle/at. */
function fittingsOf(note: HTMLElement): string[] {
	const about = (note.dataset["about"] ?? "").split(/\s+/);
	return about.flatMap((p) => /^\/?fittings[/.]([^/.]+)/.exec(p)?.[1] ?? []);
}
