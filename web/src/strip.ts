// The strip before the headline figures: what would move, while something is tried; what was refused, and why.

import type { Preview } from "./wire";

const headline = (): NodeListOf<HTMLElement> => document.querySelectorAll<HTMLElement>(".headline [data-figure]");

let strip: HTMLElement | undefined;

function element(): HTMLElement {
	if (!strip?.isConnected) {
		strip = document.createElement("section");
		strip.className = "moved";
		strip.setAttribute("aria-label", "What would change");
		strip.hidden = true;
		document.querySelector(".headline")?.before(strip);
	}
	return strip;
}

/** Says that what is seen is only predicted. */
export function reckoning(): void {
	const e = element();
	e.hidden = false;
	e.classList.add("is-reckoning");
	if (!e.querySelector(".predicted")) e.append(line("p", "predicted", "reckoning…"));
}

/** Shows what would follow. */
export function show(preview: Preview): void {
	const e = element();
	e.hidden = false;
	e.classList.remove("is-reckoning", "is-refused");
	const figures = preview.figures.map((f) => line("li", "figure", f.words));
	const appeared = preview.appeared.map((n) => line("li", `appears ${n.severity}`, `${n.severity}: ${n.title}`));
	const cleared = preview.cleared.map((n) => line("li", "clears", `cleared: ${n.title}`));
	const list = document.createElement("ul");
	list.append(...figures, ...appeared, ...cleared);
	e.replaceChildren(line("p", "sentence", preview.sentence), list);
	markHeadline(preview);
}

/** Shows why something was not done. */
export function refuse(message: string): void {
	const e = element();
	e.hidden = false;
	e.classList.remove("is-reckoning");
	e.classList.add("is-refused");
	e.replaceChildren(line("p", "sentence", message));
	markHeadline(undefined);
}

export function clear(): void {
	const e = element();
	e.hidden = true;
	e.classList.remove("is-reckoning", "is-refused");
	e.replaceChildren();
	markHeadline(undefined);
}

/** Notes beside each headline figure what it would become: the words after the arrow. */
function markHeadline(preview: Preview | undefined): void {
	for (const item of headline()) {
		const moved = preview?.figures.find((f) => f.code === item.dataset["figure"]);
		item.classList.toggle("is-moved", moved !== undefined);
		if (moved) item.dataset["to"] = moved.words.split("→").at(-1)!.trim();
		else delete item.dataset["to"];
	}
}

function line(tag: "p" | "li", name: string, text: string): HTMLElement {
	const e = document.createElement(tag);
	e.className = name;
	e.textContent = text;
	return e;
}
