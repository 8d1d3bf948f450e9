// Dragging before it is done. The first moves of a drag would be slow: what they need has yet to be found, and what they run has yet to be
// compiled. So as soon as something is chosen it is dragged to and fro where nobody sees it, a little at a time.

import { axesOf, views } from "./drawing";
import { gapsOf, moved } from "./gaps";
import { still, type Shift } from "./geometry";
import { indexOf, type Kit } from "./kit";
import * as kits from "./kits";
import { Marks } from "./marks";
import * as paper from "./paper";
import { all as chosen, whenChosen } from "./selection";
import * as shifts from "./shifts";
import { snap } from "./snap";
import { Trial } from "./trial";

const rounds = 60; // after these a move costs what it costs ever after
const slice = 8; // ms at a stretch, so that keys and presses do not wait
const pause = 20; // ms between two

let known: { readonly kit: Kit; readonly ids: string; readonly trial: Trial } | undefined;
let timer: ReturnType<typeof setTimeout> | undefined;

/** The trial of some fittings for a drag in earnest, the one that was practised with if it is of these. Practice is over then. */
export function trialOf(kit: Kit, ids: readonly string[]): Trial {
	clearTimeout(timer);
	return readied(kit, ids);
}

function readied(kit: Kit, ids: readonly string[]): Trial {
	if (known?.kit !== kit || known.ids !== ids.join()) known = { kit, ids: ids.join(), trial: new Trial(kit, ids) };
	return known.trial;
}

export function begin(): void {
	whenChosen(plan);
	kits.whenCame(plan);
}

function plan(): void {
	clearTimeout(timer);
	if (chosen().length > 0) timer = setTimeout(ready, pause);
}

/** Makes ready, and goes through the rounds a slice at a time. */
function ready(): void {
	const kit = shifts.unsettled() ? undefined : kits.current();
	const view = views()[0];
	if (!kit || !view || chosen().length === 0 || !chosen().every((id) => indexOf(kit).has(id))) return; // what has no place is not dragged
	const trial = readied(kit, chosen());
	shifts.find(trial.along.map((one) => one.id));
	const marks = new Marks(chosen(), view, 1 / paper.nearness());
	let done = 0;
	const go = (): void => {
		const until = performance.now() + slice;
		for (; done < rounds && performance.now() < until; done++) {
			practise(trial, marks, { dx: done * 7 - 200, dy: done * 3 - 90, dz: 0 });
			for (const { id } of trial.along) shifts.shift([id], still); // stays where it is
		}
		if (done < rounds) timer = setTimeout(go, pause);
		else performance.mark("practised");
	};
	timer = setTimeout(go, pause);
}

/** What a drag does in a frame, with marks that nobody sees. */
function practise(trial: Trial, marks: Marks, wanted: Shift): void {
	const axes = axesOf[marks.view.name];
	const { shift, caught } = snap(trial, wanted, axes, 15);
	const settled = trial.settled(shift);
	marks.show(shift);
	marks.guide(caught);
	marks.gaps(gapsOf(trial, moved(trial.box, settled), axes));
	trial.at(settled);
}
