// Key presses that follow each other closely are one change: what they sum up to is kept until the hand rests.

import type { Shift } from "./geometry";

export interface Nudge extends Shift {
	readonly turn: number;
}

export const rest = 400; // ms without a press

/**
 * What a press adds, or nothing for a key that moves nothing. Arrows go as on the plan: to the right is rearwards, and down
 * is to the van's right where the plan has its right side down (1), to its left where it has it up (-1).
 */
export function nudgeOf(key: string, shift: boolean, alt: boolean, down: 1 | -1 = 1): Nudge | undefined {
	const step = alt ? 100 : shift ? 1 : 10;
	const none = { dx: 0, dy: 0, dz: 0, turn: 0 };
	switch (key) {
		case "ArrowRight": return { ...none, dx: step };
		case "ArrowLeft": return { ...none, dx: -step };
		case "ArrowDown": return { ...none, dy: step * down };
		case "ArrowUp": return { ...none, dy: -step * down };
		case "PageUp": return { ...none, dz: step };
		case "PageDown": return { ...none, dz: -step };
		case "r":
		case "R": return { ...none, turn: shift ? 15 : 90 }; // capitals may be locked
		default: return undefined;
	}
}

/** Sums up the presses for one thing. */
export class Burst {
	#sum: Nudge | undefined;
	#timer: ReturnType<typeof setTimeout> | undefined;

	constructor(readonly done: (sum: Nudge) => void) {}

	get open(): boolean {
		return this.#sum !== undefined;
	}

	/** Adds a press and gives the sum so far. */
	add(n: Nudge): Nudge {
		const s = this.#sum ?? { dx: 0, dy: 0, dz: 0, turn: 0 };
		this.#sum = { dx: s.dx + n.dx, dy: s.dy + n.dy, dz: s.dz + n.dz, turn: (s.turn + n.turn) % 360 };
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => this.close(), rest);
		return this.#sum;
	}

	/** Ends the burst now. */
	close(): void {
		const sum = this.#take();
		if (sum) this.done(sum);
	}

	/** Forgets the burst. */
	drop(): void {
		this.#take();
	}

	#take(): Nudge | undefined {
		clearTimeout(this.#timer);
		const sum = this.#sum;
		this.#sum = undefined;
		return sum;
	}
}
