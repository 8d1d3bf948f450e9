// The keyboard's way: the list of fittings. With the focus on a line the arrows move what is chosen, R turns it, Delete asks and takes it
// out, Space keeps it chosen while the focus goes on, Enter opens its fields. Off a field, single keys are for the paper and its tools.

import { Burst, nudgeOf, type Nudge } from "./burst";
import * as chosen from "./chosen";
import { nameOf, sheet, views } from "./drawing";
import * as edits from "./edits";
import * as measure from "./measure";
import { isTypedField } from "./morph";
import { Motion } from "./motion";
import * as paper from "./paper";
import { doesNotMove, refusesMove, refusesTurn, say } from "./refusals";
import * as selection from "./selection";
import { speak } from "./speak";
import { unfold } from "./unfold";

let motion: Motion | undefined;

const burst = new Burst(() => {
	const done = motion;
	motion = undefined;
	void done?.drop();
});

export function begin(): void {
	document.addEventListener("keydown", (e) => {
		if (!reverse(e) && !leaves(e) && !onLine(e)) onPaper(e);
	});
	document.addEventListener("keyup", (e) => e.key === " " && release(e));
	document.addEventListener("focusout", (e) => {
		if (burst.open && (e.target as Element).matches(".fittings [data-fitting], .hand *")) burst.close();
	});
	window.addEventListener("pagehide", () => burst.close());
}

/** Undo and redo, unless a field holds something typed, which the browser then takes back itself. */
function reverse(e: KeyboardEvent): boolean {
	if (!(e.ctrlKey || e.metaKey) || e.altKey || (typing(e.target as Element) && isTypedField(e.target as Element))) return false;
	const key = e.key.toLowerCase();
	const back = key === "z" && !e.shiftKey;
	const again = (key === "z" && e.shiftKey) || (key === "y" && !e.shiftKey);
	if (!back && !again) return false;
	e.preventDefault();
	burst.close();
	void (back ? edits.undo() : edits.redo());
	return true;
}

/** Escape in a field of a line leads back to the line, with what was typed still in the field. */
function leaves(e: KeyboardEvent): boolean {
	const line = e.key === "Escape" ? (e.target as Element).closest?.<HTMLElement>(".fittings [data-fitting]") : null;
	if (!line || line === e.target || motion) return false;
	e.preventDefault();
	line.focus();
	return true;
}

const typing = (e: Element): boolean => e.matches("input:not([type=checkbox], [type=radio], [type=submit], [type=button]), textarea, select, [contenteditable]");

function onLine(e: KeyboardEvent): boolean {
	const line = e.target as HTMLElement;
	if (e.ctrlKey || e.metaKey || !line.matches?.(".fittings [data-fitting]")) return false;
	if (selection.all().length === 0 && e.key !== "Escape") selection.select(line.dataset["fitting"]);
	if (!nudge(e) && !command(line, e.key)) return false;
	e.preventDefault();
	return true;
}

/** Keys for the paper and its tools, anywhere off a field; on a button of the hand's bar the arrows go on moving what is chosen. */
function onPaper(e: KeyboardEvent): void {
	if ((e.target as Element).closest?.(".hand") && e.key.startsWith("Arrow") && selection.all().length > 0 && nudge(e)) {
		e.preventDefault();
		return;
	}
	if (!sheet() || e.defaultPrevented || e.altKey || e.metaKey || typing(e.target as Element)) return;
	const act = e.ctrlKey ? (e.key.toLowerCase() === "d" && selection.all().length > 0 ? copy : undefined) : (acts[e.key] ?? acts[e.key.toLowerCase()]);
	if (!act || (e.key === " " && (e.target as Element).closest("button, summary, a"))) return;
	e.preventDefault();
	act(e);
}

function copy(): void {
	burst.close();
	void chosen.duplicate();
}

const nearer = (times: number) => () => {
	const r = sheet()!.getBoundingClientRect();
	paper.zoom(times, r.left + r.width / 2, r.top + r.height / 2);
};

const acts: Readonly<Record<string, (e: KeyboardEvent) => void>> = {
	"+": nearer(1.5), "=": nearer(1.5), "-": nearer(1 / 1.5), "−": nearer(1 / 1.5), "0": paper.whole,
	"?": chosen.showKeys,
	m: () => measure.use(!measure.on()),
	l: () => void chosen.lock(),
	" ": (e) => !e.repeat && paper.hold(true),
	Escape: () => !measure.on() && selection.select(undefined),
};

/** The space bar let go: if it moved no paper, it keeps what has the focus in the list. */
function release(e: KeyboardEvent): void {
	if (!paper.held()) return;
	const moved = paper.letGo();
	const line = e.target as HTMLElement;
	if (moved || !line.matches?.(".fittings [data-fitting]")) return;
	const id = line.dataset["fitting"]!;
	const kept = selection.keep(id);
	speak(`${nameOf(id)} ${kept ? `stays chosen; ${selection.all().length} together` : "is chosen alone again"}.`);
}

function nudge(e: KeyboardEvent): boolean {
	const n = nudgeOf(e.key, e.shiftKey, e.altKey, views().find((v) => v.name === "plan")?.down);
	if (!n) return false;
	if (refusesMove(selection.all()) || (n.turn !== 0 && refusesTurn(selection.all()))) return true;
	if (motion?.over) burst.drop(); // a drag has taken over and saved it
	else if (motion && motion.ids.join() !== selection.all().join()) burst.close();
	if (motion?.over) motion = undefined;
	motion ??= new Motion(selection.all());
	if (stands(motion, n)) return true;
	const sum = burst.add(n);
	motion.to({ shift: { dx: sum.dx, dy: sum.dy, dz: sum.dz }, turn: sum.turn });
	return true;
}

/** Whether a press leads nowhere because of what the fittings stand against; if so it is said. */
function stands(m: Motion, n: Nudge): boolean {
	const { dx, dy, dz } = m.change.shift;
	if (n.turn !== 0 || !m.trial?.stays({ dx, dy, dz }, { dx: dx + n.dx, dy: dy + n.dy, dz: dz + n.dz })) return false;
	if (!burst.open) {
		m.cancel();
		motion = undefined;
	}
	say(doesNotMove(selection.all()));
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
			chosen.askToTakeOut(line);
			return true;
		case "Enter":
			return openFields(line);
		default:
			return false;
	}
}

function openFields(line: HTMLElement): boolean {
	void unfold(line).then((fields) => fields?.querySelector<HTMLElement>("input:not([type=hidden]), select, textarea")?.focus());
	return true;
}
