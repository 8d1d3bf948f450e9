// What would leave the page for a working or a list of offers is shown beside the drawing instead. Without script it opens as a page.

import { head } from "./wire";

let flight: AbortController | undefined;

export function begin(): void {
	document.addEventListener("click", (e) => {
		const link = (e.target as Element).closest<HTMLAnchorElement>("a.opens");
		if (!link || e.button !== 0 || e.ctrlKey || e.metaKey || e.shiftKey) return;
		e.preventDefault();
		void open(link.href, link);
	});
	document.addEventListener("submit", (e) => {
		const form = e.target as HTMLFormElement;
		if (!form.matches("form.opens")) return;
		e.preventDefault();
		const asked = new URL(form.action);
		for (const [name, value] of new FormData(form)) if (typeof value === "string") asked.searchParams.set(name, value);
		void open(asked.href, form);
	});
}

/** Shows a piece beside the drawing; where that fails the browser goes there. */
async function open(address: string, from: HTMLElement): Promise<void> {
	const beside = document.getElementById("beside");
	home ??= beside?.parentElement;
	flight?.abort();
	const mine = (flight = new AbortController());
	try {
		const answer = await fetch(address, { headers: head(), signal: mine.signal });
		if (!beside || !answer.ok) throw new Error(`${answer.status}`);
		const page = new DOMParser().parseFromString(await answer.text(), "text/html");
		place(beside, from);
		beside.replaceChildren(...page.body.childNodes, closer(beside, from));
		const margin = beside.closest(".margin");
		if (margin && beside.parentElement === home) margin.scrollTop += beside.getBoundingClientRect().top - margin.getBoundingClientRect().top;
		beside.scrollIntoView({ block: "nearest" });
		if (beside.parentElement !== home) titleOf(beside)?.focus({ preventScroll: true });
	} catch {
		if (!mine.signal.aborted) location.assign(address);
	}
}

let home: Element | null | undefined; // the margin

/** What a form has asked for stands right under it, and the focus goes to its title: the end of the margin is far below. */
function place(beside: HTMLElement, from: HTMLElement): void {
	const under = from instanceof HTMLFormElement;
	beside.toggleAttribute("data-keep", under);
	if (under) from.after(beside);
	else if (beside.parentElement !== home) home?.append(beside);
}

function titleOf(beside: HTMLElement): HTMLElement | null {
	const title = beside.querySelector<HTMLElement>("h2");
	title?.setAttribute("tabindex", "-1");
	return title;
}

function closer(beside: HTMLElement, from: HTMLElement): HTMLButtonElement {
	const b = document.createElement("button");
	b.type = "button";
	b.className = "closes";
	b.textContent = "close";
	b.addEventListener("click", () => {
		beside.replaceChildren();
		if (from.isConnected) (from.querySelector<HTMLElement>("input:not([type=hidden])") ?? from).focus();
	});
	return b;
}
