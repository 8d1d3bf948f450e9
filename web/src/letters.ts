// The key of the letters on the plan, below it: on a narrow window, which shows one view, the sheet's own key is out of sight.

import { drawing, nameOf } from "./drawing";
import { afterSwap } from "./regions";

const key = document.createElement("dl");

export function begin(): void {
	key.className = "letters";
	key.dataset["keep"] = "";
	afterSwap((region) => (region === "drawing" || region === "fittings") && show());
	show();
}

function show(): void {
	const letters = [...(drawing()?.querySelectorAll<SVGElement>('[data-view="plan"] [id$="-letter"]') ?? [])];
	key.replaceChildren(...letters.map((g) => {
		const one = document.createElement("div");
		one.append(part("dt", g.querySelector("text")?.textContent ?? ""), part("dd", nameOf(g.dataset["fitting"] ?? "")));
		return one;
	}));
	if (letters.length > 0 && !key.isConnected) drawing()?.after(key);
	if (letters.length === 0) key.remove();
}

function part(tag: "dt" | "dd", text: string): HTMLElement {
	const e = document.createElement(tag);
	e.textContent = text;
	return e;
}
