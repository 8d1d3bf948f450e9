// The keyboard's way: the list of fittings. With the focus on a line the arrows move its fitting, R turns
// it, Delete asks and takes it out, Enter opens its fields. Anywhere off a field, Ctrl+Z takes back.

import { Burst, nudgeOf } from "./burst";
import { views } from "./drawing";
import * as edits from "./edits";
import { Motion } from "./motion";
import { confirm } from "./removal";

let motion: Motion | undefined;

const burst = new Burst(() => {
	const done = motion;
	motion = undefined;
	void done?.drop();
});

export function begin(): void {
	document.addEventListener("keydown", (e) => {
		if (!reverse(e)) onLine(e);
	});
	document.addEventListener("focusout", (e) => {
		if (burst.open && (e.target as Element).matches(".fittings [data-fitting]")) burst.close();
	});
	window.addEventListener("pagehide", () => burst.close());
}

/** Undo and redo, unless a field has its own. */
function reverse(e: KeyboardEvent): boolean {
	if (!(e.ctrlKey || e.metaKey) || e.altKey || typing(e.target as Element)) return false;
	const key = e.key.toLowerCase();
	const back = key === "z" && !e.shiftKey;
	const again = (key === "z" && e.shiftKey) || (key === "y" && !e.shiftKey);
	if (!back && !again) return false;
	e.preventDefault();
	burst.close();
	void (back ? edits.undo() : edits.redo());
	return true;
}

const typing = (e: Element): boolean => e.matches("input:not([type=checkbox], [type=radio], [type=submit], [type=button]), textarea, select, [contenteditable]");

function onLine(e: KeyboardEvent): void {
	const line = e.target as HTMLElement;
	if (e.ctrlKey || e.metaKey || !line.matches?.(".fittings [data-fitting]")) return;
	if (nudge(line, e)) e.preventDefault();
	else if (command(line, e.key)) e.preventDefault();
}

function nudge(line: HTMLElement, e: KeyboardEvent): boolean {
	const n = nudgeOf(e.key, e.shiftKey, e.altKey, views().find((v) => v.name === "plan")?.down);
	if (!n) return false;
	const id = line.dataset["fitting"]!;
	if (motion?.over) burst.drop(); // a drag has taken over and saved it
	else if (motion && motion.id !== id) burst.close();
	if (motion?.over) motion = undefined;
	motion ??= new Motion(id);
	const sum = burst.add(n);
	motion.to({ dx: sum.dx, dy: sum.dy, dz: sum.dz }, sum.turn);
	return true;
}

function command(line: HTMLElement, key: string): boolean {
	switch (key) {
		case "Escape":
			if (!motion) return false;
			burst.drop();
			motion.cancel();
			motion = undefined;
			return true;
		case "Delete":
			burst.close();
			confirm(line);
			return true;
		case "Enter":
			return openFields(line);
		default:
			return false;
	}
}

function openFields(line: HTMLElement): boolean {
	const details = line.querySelector("details");
	if (details) details.open = true;
	const field = line.querySelector<HTMLElement>("input:not([type=hidden]), select, textarea");
	field?.focus();
	return field !== null;
}
