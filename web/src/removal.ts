// Taking a fitting out: asked in its own line of the list, never in a dialog over the drawing.

import { nameOf } from "./drawing";
import * as edits from "./edits";

/** Asks in the line; only one line asks at a time. */
export function confirm(line: HTMLElement): void {
	for (const open of document.querySelectorAll(".removal")) open.remove();
	const id = line.dataset["fitting"]!;
	const ask = document.createElement("div");
	ask.className = "removal";
	ask.dataset["keep"] = "";
	ask.setAttribute("role", "group");
	ask.setAttribute("aria-label", `Take ${nameOf(id)} out?`);
	const words = document.createElement("p");
	words.textContent = `Take ${nameOf(id)} out?`;
	const close = () => {
		ask.remove();
		line.focus();
	};
	const out = button("Take it out", () => void takeOut(line, id, close));
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

/** The focus goes to the next line, else the one before: the line it is on will be gone. */
async function takeOut(line: HTMLElement, id: string, close: () => void): Promise<void> {
	const next = (line.nextElementSibling ?? line.previousElementSibling) as HTMLElement | null;
	const out = await edits.told(edits.save(`/fittings/${encodeURIComponent(id)}/delete`, (revision) => new URLSearchParams({ base: String(revision) })));
	close();
	if (out) next?.focus();
}

function button(words: string, press: () => void): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.textContent = words;
	b.addEventListener("click", press);
	return b;
}
