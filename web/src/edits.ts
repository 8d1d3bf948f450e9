// Changes that are saved: one after the other, each based on the revision that the one before it made.

import { sheet } from "./drawing";
import { drawnRevision, newest, refresh } from "./regions";
import { speak } from "./speak";
import * as strip from "./strip";
import { post, Refused, type Saved } from "./wire";

const narrow = window.matchMedia("(max-width: 640px)");

let last: Promise<unknown> = Promise.resolve();
let own = 0; // the newest revision that was made here

/**
 * The revision in which things are seen where they stand as a hand takes hold of them: the one that is drawn, or what was changed here a
 * moment ago and is not drawn yet.
 */
export function seen(): Promise<number> {
	const drawn = drawnRevision();
	return last.then(() => Math.max(drawn, own));
}

/** Posts a change when those before it are done; the body, or the promise of it, is made for the revision that then is newest. */
export function save(path: string, body: (revision: number) => unknown): Promise<Saved> {
	const saved = last.then(async () => post<Saved>(path, await body(newest())));
	last = saved.then(follow, learn);
	return saved;
}

/** Waits for a change and shows on the strip why it was refused; true if it was saved. */
export async function told(saved: Promise<Saved>): Promise<boolean> {
	try {
		await saved;
		return true;
	} catch (why) {
		if (!(why instanceof Refused)) throw why;
		strip.refuse(why.message);
		speak(why.message);
		return false;
	}
}

function follow(saved: Saved): void {
	own = saved.revision;
	if (narrow.matches && sheet()) strip.result(saved.sentence); // the margin, where it stands, is far below
	else strip.clear();
	speak(saved.sentence);
	void refresh(saved.revision);
}

/** A clash tells of a newer revision. */
function learn(why: unknown): void {
	if (why instanceof Refused && why.revision > newest()) void refresh(why.revision);
}

/** Takes the last change back, or brings it back. */
export const undo = async (): Promise<boolean> => mayUndo() && reverse("/undo");
export const redo = (): Promise<boolean> => reverse("/redo");

let warned = 0; // the revision whose undoing was asked about

/** Asks once before the change is taken back that put the first things in: whoever undoes once too often would stand before an empty van. */
export function mayUndo(): boolean {
	if (!document.querySelector(".said[data-first]") || warned === newest()) return true;
	warned = newest();
	const question = "That would take the starting arrangement out again, and leave the van empty. Undo once more if you mean it.";
	strip.tell(question);
	speak(question);
	return false;
}

const reverse = (path: string) => told(save(path, (revision) => new URLSearchParams({ base: String(revision) })));
