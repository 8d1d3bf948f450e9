// The fields of a thing in the list, or of a cable, are long: they come when they are asked for. Without script the same link leads to the page with them.

import { ask, open } from "./regions";

export function begin(): void {
	document.addEventListener("click", (e) => {
		const all = (e.target as Element).closest<HTMLAnchorElement>("a.unfolds-all");
		if (all && e.button === 0 && !e.ctrlKey && !e.metaKey && !e.shiftKey) {
			e.preventDefault();
			void unfoldAll(all);
			return;
		}
		const line = (e.target as Element).closest("a.unfolds")?.parentElement;
		if (!line || e.button !== 0 || e.ctrlKey || e.metaKey || e.shiftKey) return;
		e.preventDefault();
		void unfold(line).then((fields) => fields?.querySelector("summary")?.focus());
	});
}

/** Shows what a region left out, and takes the focus to the first of it. */
export async function unfoldAll(link: HTMLAnchorElement): Promise<void> {
	const region = link.closest<HTMLElement>("[data-region]");
	const first = link.parentElement?.querySelector("[id]")?.id;
	if (region) await ask(region, new URL(link.href).searchParams.get("open")!);
	if (first) document.getElementById(first)?.querySelector<HTMLElement>("a[href]")?.focus();
}

/** Opens the fields in a line of a list, once they are there; none when nobody answers. */
export async function unfold(line: HTMLElement): Promise<HTMLDetailsElement | null> {
	const fields = () => line.querySelector<HTMLDetailsElement>(":scope > details[data-key=fields]");
	const region = line.closest<HTMLElement>("[data-region]");
	const link = line.querySelector<HTMLAnchorElement>(":scope > a.unfolds");
	if (link && region) await open(region, line, new URL(link.href).searchParams.get("open")!);
	const details = fields();
	if (details) details.open = true;
	return details;
}
