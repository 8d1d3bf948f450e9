// Keeps the drawing in sight while things are chosen by key in the list below it: a class that the sheet's style makes it stay by.

const list = ".fittings-list";

/** Whether the last thing done was a key that walks from thing to thing: neither a press of the pointer nor an answer by key may move the page under it. */
let keyed = false;

export function begin(): void {
	document.addEventListener("keydown", (e) => (keyed = e.key === "Tab" || e.key.startsWith("Arrow")), { capture: true });
	document.addEventListener("pointerdown", () => (keyed = false), { capture: true });
	document.addEventListener("focusin", (e) => keyed && follow(e.target as Element));
	document.addEventListener("click", (e) => !keyed && !inList(e.target as Element) && document.body.classList.remove("is-listing"));
}

const inList = (e: Element): boolean => e.closest(list) !== null;

function follow(on: Element): void {
	const is = inList(on);
	if (document.body.classList.toggle("is-listing", is)) on.scrollIntoView({ block: "nearest" });
}
