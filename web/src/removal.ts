// Taking a fitting out: asked in its own line of the list, never in a dialog over the drawing.

import { nameOf } from "./drawing";
import * as edits from "./edits";
import { Refused } from "./wire";

/** Asks in the line; only one line asks at a time. With a reason it asks whether to take out also what hangs on it. */
export function confirm(line: HTMLElement, held?: string): void {
	for (const open of document.querySelectorAll(".removal")) open.remove();
	const id = line.dataset["fitting"]!;
	const ask = document.createElement("div");
	ask.className = "removal";
	ask.dataset["keep"] = "";
	ask.setAttribute("role", "group");
	ask.setAttribute("aria-label", `Take ${nameOf(id)} out?`);
	const words = document.createElement("p");
	words.textContent = held ?? `Take ${nameOf(id)} out?`;
	const close = () => {
		ask.remove();
		line.focus();
	};
	const out = button(held ? "Take out all of it" : "Take it out", () => void takeOut(line, id, close, held !== undefined));
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
async function takeOut(line: HTMLElement, id: string, close: () => void, withAll = false): Promise<void> {
	const next = (line.nextElementSibling ?? line.previousElementSibling) as HTMLElement | null;
	const fields = (revision: number) => new URLSearchParams({ base: String(revision), ...(withAll && { with: "yes" }) });
	const saved = edits.save(`/fittings/${encodeURIComponent(id)}/delete`, fields);
	try {
		await saved;
		close();
		next?.focus();
	} catch (why) {
		if (why instanceof Refused && why.held && !withAll) {
			confirm(line, why.message);
			return;
		}
		close();
		await edits.told(saved);
	}
}

function button(words: string, press: () => void): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.textContent = words;
	b.addEventListener("click", press);
	return b;
}
