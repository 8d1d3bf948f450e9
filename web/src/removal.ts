// Taking a fitting out: asked in its own line of the list, or beside the drawing, never in a dialog over it.

import { nameOf } from "./drawing";
import * as edits from "./edits";
import { afterSwap, newest } from "./regions";
import { Refused } from "./wire";

/** Where it is asked, and how the page is changed there so that the drawing stays where it is. */
interface Place {
	readonly at: HTMLElement;
	readonly changed: (change: () => void) => void;
}

/** A question is about one revision: when a newer one is shown, the thing may be gone or another. */
export function begin(): void {
	afterSwap(() => {
		for (const open of document.querySelectorAll<HTMLElement>(".removal")) if (Number(open.dataset["asked"]) !== newest()) open.remove();
	});
}

/** Asks for one fitting or for several, in the line or elsewhere; only one question is open at a time. With a reason it asks whether to take out also what hangs on them. */
export function confirm(line: HTMLElement, ids: readonly string[], place: Place = { at: line, changed: (change) => change() }, held?: string): void {
	for (const open of document.querySelectorAll(".removal")) open.remove();
	const what = ids.length === 1 ? nameOf(ids[0]!) : `${ids.length} things`;
	const ask = document.createElement("div");
	ask.className = "removal";
	ask.dataset["keep"] = "";
	ask.dataset["asked"] = String(newest());
	ask.setAttribute("role", "group");
	ask.setAttribute("aria-label", `Take ${what} out?`);
	const words = document.createElement("p");
	words.textContent = held ?? `Take ${what} out?`;
	const close = () => {
		place.changed(() => ask.remove());
		line.focus({ preventScroll: place.at !== line });
	};
	const out = button(held ? "Take out all of it" : "Take it out", () => void takeOut(line, ids, place, close, held !== undefined));
	const keep = button("Keep it", close);
	ask.append(words, keep, out); // the focus begins on the first, and Tab leads to the other
	ask.addEventListener("keydown", (e) => {
		if (e.key !== "Escape" && !((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === "z")) return; // nothing is done yet that could be undone
		e.preventDefault();
		e.stopPropagation();
		close();
	});
	place.changed(() => place.at.append(ask));
	keep.focus({ preventScroll: place.at !== line });
}

/** The focus goes to the next line, else the one before: the line it is on will be gone. What others hang on is asked about again. */
async function takeOut(line: HTMLElement, ids: readonly string[], place: Place, close: () => void, withAll = false): Promise<void> {
	const next = nextOf(line, ids);
	const fields = (revision: number) => new URLSearchParams({ base: String(revision), ...(withAll && { with: "yes" }) });
	const saved = edits.save(`/fittings/${ids.join(",")}/delete`, fields);
	try {
		await saved;
		close();
		next?.focus({ preventScroll: place.at !== line });
	} catch (why) {
		if (why instanceof Refused && why.held && !withAll) {
			confirm(line, ids, place, why.message);
			return;
		}
		close();
		await edits.told(saved);
	}
}

function nextOf(line: HTMLElement, ids: readonly string[]): HTMLElement | null {
	const stays = (e: Element): boolean => !ids.includes((e as HTMLElement).dataset["fitting"] ?? "");
	const all = [...(line.parentElement?.children ?? [])];
	const at = all.indexOf(line);
	return (all.slice(at + 1).find(stays) ?? all.slice(0, at).reverse().find(stays) ?? null) as HTMLElement | null;
}

function button(words: string, press: () => void): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.textContent = words;
	b.addEventListener("click", press);
	return b;
}
