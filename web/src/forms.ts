// Forms of class inline are sent without leaving the page. What was typed stays; a refusal stands beside
// its field, and a clash shows both values with a button each. Without script they post as they are.

import { choose } from "./chosen";
import * as edits from "./edits";
import { isTyped } from "./morph";
import { newest, refresh } from "./regions";
import { Refused, type Clash } from "./wire";

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

export function begin(): void {
	document.addEventListener("submit", (e) => {
		const form = e.target as HTMLFormElement;
		if (!form.matches("form.inline") || form.enctype === "multipart/form-data") return;
		e.preventDefault();
		if (actionOf(form, e.submitter) !== "/undo" || edits.mayUndo()) void send(form, e.submitter);
	});
}

/**
 * Sends a form. What was typed is based on the revision it was typed at, so that a clash is found; a button
 * alone (10 mm further, take out) means what is there now.
 */
async function send(form: HTMLFormElement, submitter: HTMLElement | null, base?: number): Promise<void> {
	clear(form);
	const fields = new URLSearchParams();
	for (const [name, value] of new FormData(form, submitter)) if (typeof value === "string") fields.append(name, value);
	const typed = isTyped(form);
	const based = (revision: number) => {
		if (base !== undefined || !typed) fields.set("base", String(base ?? revision));
		return fields;
	};
	const note = form.closest(".notes");
	if (note?.classList.contains("is-sending")) return; // by then another note may stand where this one did
	const keyed = submitter?.matches(":focus-visible") ?? false;
	form.classList.add("is-sending");
	note?.classList.add("is-sending");
	try {
		const { mark, made } = await edits.save(actionOf(form, submitter), based);
		saved(form, mark);
		if (made?.length) await showMade(made, form);
		else if (form.closest(".margin")) await showSaid(note, keyed);
	} catch (why) {
		if (!(why instanceof Refused)) throw why;
		explain(form, why, submitter);
	} finally {
		form.classList.remove("is-sending");
		note?.classList.remove("is-sending");
	}
}

/**
 * The focus goes to the sentence that answers: what it was on is gone, or belongs to another note by now. A button of the way back that
 * can still be pressed keeps it.
 */
async function showSaid(note: Element | null, keyed: boolean): Promise<void> {
	await refresh(newest());
	const on = document.activeElement ?? document.body;
	const stays = note ? on !== document.body && !note.contains(on) : on !== document.body && !on.matches(":disabled");
	if (!stays) document.querySelector<HTMLElement>(".said .answered")?.focus({ preventScroll: !keyed });
}

/** What a form has made is chosen, and shown on the drawing; the list of offers that it came from is done with. */
async function showMade(made: readonly string[], form: HTMLFormElement): Promise<void> {
	await refresh(newest());
	form.closest("#beside")?.replaceChildren();
	document.querySelector(".margin")?.scrollTo({ top: 0 }); // what was done stands at its head
	choose(made);
}

function actionOf(form: HTMLFormElement, submitter: HTMLElement | null): string {
	return new URL(submitter?.getAttribute("formaction") ?? form.getAttribute("action") ?? "", location.href).pathname;
}

/** What is saved is no longer typed: it is what the field holds, and what the next change is based on. */
function saved(form: HTMLFormElement, mark: string): void {
	form.querySelector("input[name=base]")?.setAttribute("value", mark);
	for (const f of fieldsOf(form)) {
		if (f instanceof HTMLSelectElement) for (const o of f.options) o.defaultSelected = o.selected;
		else if (f instanceof HTMLInputElement && f.matches("[type=checkbox], [type=radio]")) f.defaultChecked = f.checked;
		else f.defaultValue = f.value;
	}
}

function explain(form: HTMLFormElement, why: Refused, submitter: HTMLElement | null): void {
	for (const clash of why.conflict) ask(form, clash, why.revision, submitter);
	const beside = Object.entries(why.wrong);
	for (const [path, text] of beside) say(form, text, fieldFor(form, path));
	if (why.conflict.length > 0) return;
	if (beside.length === 0) say(form, why.message, fieldsOf(form)[0]);
	else if (why.message) say(form, why.message, undefined);
	form.querySelector<Field>("[aria-invalid=true]")?.focus();
}

const fieldsOf = (form: HTMLFormElement): Field[] =>
	[...form.elements].filter((e): e is Field => e.matches("input:not([type=hidden], [type=submit]), textarea, select"));

/** The field for a place of the document: the value that follows its path, else the first one. */
function fieldFor(form: HTMLFormElement, path: string): Field | undefined {
	const all = [...form.elements];
	const at = all.findIndex((e) => e instanceof HTMLInputElement && e.name === "path" && e.value === path);
	return (all.slice(at + 1).find((e) => (e as Field).name === "value") as Field | undefined) ?? fieldsOf(form)[0];
}

let count = 0;

function say(form: HTMLFormElement, text: string, field: Field | undefined): HTMLElement {
	const p = document.createElement("p");
	p.className = "refused";
	p.dataset["keep"] = "";
	p.id = `refused-${++count}`;
	p.textContent = text;
	if (!field) {
		form.append(p);
		return p;
	}
	field.setAttribute("aria-invalid", "true");
	field.setAttribute("aria-describedby", p.id);
	field.after(p);
	return p;
}

/** Shows both values of a clash. Mine is sent again for the newer revision; theirs takes its place in the field. */
function ask(form: HTMLFormElement, clash: Clash, revision: number, submitter: HTMLElement | null): void {
	const field = fieldFor(form, clash.place);
	const p = say(form, `${clash.words} was changed elsewhere meanwhile.`, field);
	const choose = (words: string, then: () => void) => {
		const b = document.createElement("button");
		b.type = "button";
		b.textContent = words;
		b.addEventListener("click", then);
		p.append(" ", b);
		return b;
	};
	choose(`Keep mine: ${clash.mine || "nothing"}`, () => void send(form, submitter, revision)).focus();
	choose(`Take theirs: ${clash.theirs || "nothing"}`, () => {
		clear(form);
		if (field) field.value = clash.theirs;
		saved(form, String(revision));
		field?.focus();
		void refresh(revision);
	});
}

function clear(form: HTMLFormElement): void {
	for (const p of form.querySelectorAll(".refused[data-keep]")) p.remove();
	for (const f of form.querySelectorAll("[aria-invalid]")) {
		f.removeAttribute("aria-invalid");
		f.removeAttribute("aria-describedby");
	}
}
