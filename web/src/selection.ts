// Which fitting is selected: one at most, the same on the drawing and in the list.

import { groupsOf, lineOf } from "./drawing";
import * as kits from "./kits";
import { afterSwap } from "./regions";

let selected: string | undefined;

export const current = (): string | undefined => selected;

export function select(id: string | undefined): void {
	if (id !== selected) {
		mark(selected, false);
		selected = id;
	}
	mark(selected, true);
	if (selected) void kits.bring();
}

function mark(id: string | undefined, is: boolean): void {
	if (!id) return;
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

/** Keeps the selection through swaps, and follows the focus in the list. */
export function begin(): void {
	afterSwap(() => select(selected));
	document.addEventListener("focusin", (e) => {
		const line = (e.target as Element).closest<HTMLElement>(".fittings [data-fitting]");
		if (line) select(line.dataset["fitting"]);
	});
}
