// Makes an element equal to a fresh one without replacing what need not be: focus, selection, what is
// being typed, an opened or closed <details> and the script's own marks stay. Nothing in a fragment is ever run.
//
// Small enough to be our own: a library for it weighs more than all the rest here and brings
// evaluation and inline styles, which the content policy forbids.

/** Classes that begin so are states set by script. */
const state = "is-";

export function morph(old: Element, fresh: Element): void {
	const digest = fresh.getAttribute("data-digest");
	if (digest && digest === old.getAttribute("data-digest")) return;
	const field = old instanceof HTMLInputElement || old instanceof HTMLTextAreaElement || old instanceof HTMLSelectElement;
	if (field && old.name === "base" && old.form && isTyped(old.form)) return; // else a clash would go unseen
	const kept = field && isTypedField(old);
	attributes(old, fresh);
	children(old, fresh);
	if (field && !kept) setField(old, fresh);
}

/** Whether a form holds something that was typed and not yet sent. */
export function isTyped(form: HTMLFormElement): boolean {
	return [...form.elements].some((e) => isTypedField(e));
}

/** Whether a field holds something that was typed and not yet sent. */
export function isTypedField(e: Element): boolean {
	if (e instanceof HTMLInputElement) return e.type === "checkbox" || e.type === "radio" ? e.checked !== e.defaultChecked : e.value !== e.defaultValue;
	if (e instanceof HTMLTextAreaElement) return e.value !== e.defaultValue;
	if (e instanceof HTMLSelectElement) return [...e.options].some((o) => o.selected !== o.defaultSelected) && e.value !== standing(e);
	return false;
}

/** What a select shows when nobody touched it: what is marked, else its first option. */
function standing(e: HTMLSelectElement): string {
	return ([...e.options].find((o) => o.defaultSelected) ?? e.options[0])?.value ?? "";
}

function setField(old: Element, fresh: Element): void {
	if (old instanceof HTMLInputElement && fresh instanceof HTMLInputElement) {
		if (old.type !== "file") old.value = fresh.defaultValue;
		old.checked = fresh.defaultChecked;
	} else if (old instanceof HTMLTextAreaElement && fresh instanceof HTMLTextAreaElement) {
		old.value = fresh.defaultValue;
	} else if (old instanceof HTMLSelectElement && fresh instanceof HTMLSelectElement) {
		old.value = standing(fresh);
	}
}

function attributes(old: Element, fresh: Element): void {
	const states = [...old.classList].filter((c) => c.startsWith(state));
	const kept = (name: string): boolean => name === "class" || (name === "open" && old instanceof HTMLDetailsElement);
	for (const { name } of [...old.attributes]) if (!kept(name) && !fresh.hasAttribute(name)) old.removeAttribute(name);
	for (const { name, value } of [...fresh.attributes]) if (!kept(name) && old.getAttribute(name) !== value) old.setAttribute(name, value);
	const wanted = [fresh.getAttribute("class") ?? "", ...states].join(" ").trim();
	if (wanted !== (old.getAttribute("class") ?? "")) old.setAttribute("class", wanted);
}

function children(old: Element, fresh: Element): void {
	const keyed = new Map<string, Element>();
	for (const child of old.children) if (keyOf(child)) keyed.set(keyOf(child), child);
	let at: ChildNode | null = old.firstChild;
	for (const wanted of [...fresh.childNodes]) {
		while (at instanceof Element && at.hasAttribute("data-keep")) at = at.nextSibling;
		const match = partner(wanted, at, keyed);
		if (!match) {
			old.insertBefore(document.importNode(wanted, true), at);
			continue;
		}
		if (match === at) at = at.nextSibling;
		else place(old, match, at);
		if (match instanceof Element && wanted instanceof Element) morph(match, wanted);
		else if (match.nodeValue !== wanted.nodeValue) match.nodeValue = wanted.nodeValue;
	}
	while (at) {
		const gone: ChildNode = at;
		at = at.nextSibling;
		if (!(gone instanceof Element && gone.hasAttribute("data-keep"))) gone.remove();
	}
}

/** The old node that becomes the wanted one: that of the same key wherever it is, else the next one if alike. */
function partner(wanted: ChildNode, at: ChildNode | null, keyed: Map<string, Element>): ChildNode | undefined {
	if (wanted instanceof Element && keyOf(wanted)) {
		const match = keyed.get(keyOf(wanted));
		keyed.delete(keyOf(wanted));
		return match;
	}
	for (let node = at; node; node = node.nextSibling) {
		if (node instanceof Element && (keyOf(node) || node.hasAttribute("data-keep"))) continue;
		return node.nodeName === wanted.nodeName ? node : undefined;
	}
	return undefined;
}

function keyOf(e: Element): string {
	const key = e.id || e.getAttribute("data-key") || e.getAttribute("data-fitting");
	return key ? `${e.nodeName} ${key}` : "";
}

/** Moves a node; one with the focus in it keeps it where the browser can move without taking out. */
function place(parent: Element, node: ChildNode, before: ChildNode | null): void {
	const mover = parent as Element & { moveBefore?: (node: Node, before: Node | null) => void };
	if (mover.moveBefore) mover.moveBefore(node, before);
	else parent.insertBefore(node, before);
}
