// The strip before the headline figures: what would move, while something is tried; what was refused, and why.

import type { Preview } from "./wire";

const headline = (): NodeListOf<HTMLElement> => document.querySelectorAll<HTMLElement>(".headline [data-figure]");

let strip: HTMLElement | undefined;
let sentence: HTMLElement;
let list: HTMLElement;

function element(): HTMLElement {
	if (!strip) {
		strip = document.createElement("section");
		strip.className = "moved";
		strip.setAttribute("aria-label", "What would change");
		sentence = line("p", "sentence", "");
		list = document.createElement("ul");
		strip.append(sentence, list, line("p", "predicted", "reckoning…"));
	}
	if (!strip.isConnected) document.querySelector(".headline")?.before(strip);
	return strip;
}

/** How the strip stands; what it says stays until it says something else, so that nothing jumps under the hand. */
type State = "hidden" | "reckoning" | "known" | "refused" | "result";

function turn(to: State): void {
	const e = element();
	e.hidden = to === "hidden";
	e.classList.toggle("is-reckoning", to === "reckoning");
	e.classList.toggle("is-refused", to === "refused");
	e.classList.toggle("is-result", to === "result");
}

/** On a small screen the strip keeps to the edge away from the finger; about the middle it stays where it is. */
export function keepAwayFrom(hand: number): void {
	const share = hand / window.innerHeight;
	if (share > 0.6) document.body.classList.add("is-hand-low");
	if (share < 0.4) document.body.classList.remove("is-hand-low");
}

/** Says that what is seen is only predicted. */
export const reckoning = (): void => turn("reckoning");

/** Shows what would follow. */
export function show(preview: Preview): void {
	turn("known");
	sentence.textContent = inShort(preview);
	const { appeared, cleared } = preview;
	sentence.dataset["first"] = appeared.length > 0 ? `${counted(appeared.length)}. ` : "";
	const rest = appeared.length - most;
	list.replaceChildren(
		...appeared.slice(0, most).map((n) => line("li", `appears ${n.severity}`, `${n.severity}: ${n.title}`)),
		...(rest > 0 ? [line("li", "rest", `and ${rest} more`)] : []),
		...cleared.slice(0, most).map((n) => line("li", "clears", `cleared: ${n.title}`)),
	);
	markHeadline(preview);
}

/** Notes named at most: the strip is to be read at a glance, and must not hide the drawing. */
const most = 3;

/** The figures that move; the notes are counted, since the sentence of a bad place names a dozen. */
export function inShort(preview: Preview): string {
	const [figures] = preview.sentence.split(/\. (?=[A-Z])/, 1);
	const count = preview.appeared.length;
	return `${figures!.replace(/\.$/, "")}.${count > 0 ? ` ${counted(count)}.` : ""}`;
}

const counted = (count: number): string => `${count} new ${count > 1 ? "notes" : "note"}`;

/** Shows why something was not done. */
export function refuse(message: string): void {
	turn("refused");
	sentence.textContent = message;
	list.replaceChildren();
	markHeadline(undefined);
}

/** Says what a change did, until something else is to be said. */
export const result = (message: string): void => tell(message, "result");

/** Says something that is neither a change nor a refusal. */
export function tell(message: string, as: "known" | "result" = "known"): void {
	turn(as);
	sentence.textContent = message;
	list.replaceChildren();
	markHeadline(undefined);
}

export function clear(): void {
	turn("hidden");
	sentence.textContent = "";
	list.replaceChildren();
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
