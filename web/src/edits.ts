// Changes that are saved: one after the other, each based on the revision that the one before it made.

import { newest, refresh } from "./regions";
import { speak } from "./speak";
import * as strip from "./strip";
import { post, Refused, type Saved } from "./wire";

let last: Promise<unknown> = Promise.resolve();

/** Posts a change when those before it are done; the body is made for the revision that then is newest. */
export function save(path: string, body: (revision: number) => unknown): Promise<Saved> {
	const saved = last.then(() => post<Saved>(path, body(newest())));
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
	strip.clear();
	speak(saved.sentence);
	void refresh(saved.revision);
}

/** A clash tells of a newer revision. */
function learn(why: unknown): void {
	if (why instanceof Refused && why.revision > newest()) void refresh(why.revision);
}

/** Takes the last change back, or brings it back. */
export const undo = (): Promise<boolean> => reverse("/undo");
export const redo = (): Promise<boolean> => reverse("/redo");

const reverse = (path: string) => told(save(path, (revision) => new URLSearchParams({ base: String(revision) })));
