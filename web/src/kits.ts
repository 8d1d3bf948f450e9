// The drag kit of the page's mode, fetched when a fitting is selected and again when the build has changed.

import { mode } from "./drawing";
import type { Kit } from "./kit";
import { newest } from "./regions";
import { get } from "./wire";

let kit: Kit | undefined;
let coming: Promise<void> | undefined;
const waiting = new Set<() => void>();

/** Hears of every kit that came. */
export function whenCame(then: () => void): void {
	waiting.add(then);
}

/** The kit if it is of the newest revision; otherwise it is fetched, and there is no prediction yet. */
export function current(): Kit | undefined {
	if (kit && kit.revision >= newest()) return kit;
	void bring();
	return undefined;
}

/** Fetches the kit unless it is at hand or on its way. */
export function bring(): Promise<void> {
	if (kit && kit.revision >= newest()) return Promise.resolve();
	coming ??= fetchNewest();
	return coming;
}

/** What was changed while a kit was on its way is not in it: another is fetched at once, since nothing would ask for it again. */
async function fetchNewest(): Promise<void> {
	try {
		do kit = await get<Kit>(`/drag-kit?mode=${encodeURIComponent(mode())}`);
		while (kit.revision < newest());
	} catch {
		kit = undefined; // without it a drag goes by previews alone
	}
	coming = undefined;
	if (kit) for (const then of waiting) then();
}
