// Taking a fitting out: asked in its own line of the list, never in a dialog over the drawing.

import { nameOf } from "./drawing";
import * as edits from "./edits";
import { Refused } from "./wire";

/** Asks in the line, for its fitting or for several; only one line asks at a time. With a reason it asks whether to take out also what hangs on them. */
export function confirm(line: HTMLElement, ids: readonly string[], held?: string): void {
	for (const open of document.querySelectorAll(".removal")) open.remove();
	const what = ids.length === 1 ? nameOf(ids[0]!) : `${ids.length} things`;
	const ask = document.createElement("div");
	ask.className = "removal";
	ask.dataset["keep"] = "";
	ask.setAttribute("role", "group");
	ask.setAttribute("aria-label", `Take ${what} out?`);
	const words = document.createElement("p");
	words.textContent = held ?? `Take ${what} out?`;
	const close = () => {
		ask.remove();
		line.focus();
	};
	const out = button(held ? "Take out all of it" : "Take it out", () => void takeOut(line, ids, close, held !== undefined));
	const keep = button("Keep it", close);
	ask.append(words, out, keep);
	ask.addEventListener("keydown", (e) => {
		if (e.key !== "Escape") return;
		e.stopPropagation();
		close();
	});
	line.append(ask);
	keep.focus();
}

/** The focus goes to the next line, else the one before: the line it is on will be gone. What others hang on is asked about again. */
async function takeOut(line: HTMLElement, ids: readonly string[], close: () => void, withAll = false): Promise<void> {
	const next = nextOf(line, ids);
	const fields = (revision: number) => new URLSearchParams({ base: String(revision), ...(withAll && { with: "yes" }) });
	const saved = edits.save(`/fittings/${ids.join(",")}/delete`, fields);
	try {
		await saved;
		close();
		next?.focus();
	} catch (why) {
		if (why instanceof Refused && why.held && !withAll) {
			confirm(line, ids, why.message);
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
