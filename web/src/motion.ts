// One fitting on its way, by pointer or by keys: drawn where it would be, tried against the kit, asked of
// the server, and in the end dropped as one edit or put back.

import { groupsOf, lineOf, mode } from "./drawing";
import * as edits from "./edits";
import { still, type Shift } from "./geometry";
import * as kits from "./kits";
import { Previews, type Asked } from "./preview";
import { afterSwap, newest, refresh } from "./regions";
import * as shifts from "./shifts";
import { speak } from "./speak";
import * as strip from "./strip";
import { Trial } from "./trial";
import type { Faces, Move, Preview } from "./wire";

let underWay: Motion | undefined;

/** The motion under way, if any. */
export const current = (): Motion | undefined => underWay;

export class Motion {
	shift: Shift = still;
	turn = 0;
	snap: Faces = {};
	trial: Trial | undefined;
	onSwap: () => void = () => {};
	readonly #previews: Previews;
	#fouled: readonly string[] = [];
	#missed: readonly string[] = []; // fouls of the last answer that the prediction did not see
	#mistaken: readonly string[] = []; // and those that it saw and are none
	#over = false;

	constructor(readonly id: string) {
		void underWay?.drop(); // what keys moved a moment ago is meant
		underWay = this;
		strip.clear();
		this.#previews = new Previews({ answer: (p, asked) => this.#answer(p, asked), refused: (why) => strip.refuse(why.message) });
		this.prepare();
		for (const g of groupsOf(id)) g.classList.add("is-moving");
	}

	/** Makes ready to predict, once the kit is there and everything is drawn where the kit has it. */
	prepare(): void {
		const kit = shifts.unsettled() ? undefined : kits.current();
		this.trial = kit?.fittings.some((f) => f.id === this.id) ? new Trial(kit, this.id) : undefined;
		if (!kit) void kits.bring().then(() => { if (!this.trial && !this.#over && !shifts.unsettled() && kits.current()) this.prepare(); });
	}

	/** Whether it was dropped or put back. */
	get over(): boolean {
		return this.#over;
	}

	get #family(): Iterable<string> {
		return this.trial?.family ?? [this.id];
	}

	to(shift: Shift, turn = 0, snap: Faces = {}): void {
		this.shift = shift;
		this.turn = turn;
		this.snap = snap;
		shifts.shift(this.#family, shift);
		if (this.trial) this.#mark(this.#corrected(this.#predicted(shift)));
		strip.reckoning();
		this.#previews.want({ revision: newest(), mode: mode(), moves: [this.#move()] });
	}

	/** Saves where the fitting is now as one edit; true if it was saved. */
	async drop(): Promise<boolean> {
		if (this.#over) return false;
		const move = this.#move();
		const family = [...this.#family];
		this.#end();
		if (move.dx === 0 && move.dy === 0 && move.dz === 0 && move.turn === 0) {
			strip.clear();
			return false;
		}
		const hold = shifts.hold(family, this.shift);
		strip.reckoning();
		const saved = await edits.told(edits.save("/edit", (revision) => ({ revision, mode: mode(), moves: [move] })));
		if (!saved) {
			shifts.release(hold);
			return false;
		}
		hold.until = newest();
		await refresh(newest());
		shifts.settle(newest());
		return true;
	}

	cancel(): void {
		if (this.#over) return;
		shifts.shift(this.#family, still);
		this.#end();
		strip.clear();
	}

	/** Draws again what a drawing drawn anew has lost. */
	redraw(): void {
		this.prepare();
		for (const g of groupsOf(this.id)) g.classList.add("is-moving");
		shifts.shift(this.#family, this.shift);
		this.onSwap();
	}

	#move(): Move {
		return { fitting: this.id, ...this.shift, turn: this.turn, snap: this.snap };
	}

	/** What the kit says is fouled, the fitting itself included. */
	#predicted(shift: Shift): string[] {
		const found = this.trial?.at(shift);
		return found && (found.outside || found.fouled.length > 0) ? [...found.fouled, this.id] : [];
	}

	// Where the server's answer and the prediction differ, the answer wins: until the next one the prediction is taken with that difference.
	#answer(preview: Preview, asked: Asked): void {
		strip.show(preview);
		speak(strip.inShort(preview));
		const predicted = this.#predicted(asked.moves[0] ?? this.shift);
		this.#missed = preview.fouls.filter((id) => !predicted.includes(id));
		this.#mistaken = predicted.filter((id) => !preview.fouls.includes(id));
		this.#mark(this.#corrected(this.#predicted(this.shift)));
	}

	#corrected(predicted: readonly string[]): string[] {
		return [...predicted.filter((id) => !this.#mistaken.includes(id)), ...this.#missed.filter((id) => !predicted.includes(id))];
	}

	#mark(fouled: readonly string[]): void {
		if (fouled.length === this.#fouled.length && fouled.every((id, i) => id === this.#fouled[i])) return;
		for (const id of this.#fouled) if (!fouled.includes(id)) foul(id, false);
		for (const id of fouled) foul(id, true);
		this.#fouled = fouled;
	}

	#end(): void {
		this.#over = true;
		if (underWay === this) underWay = undefined;
		this.#previews.stop();
		this.#mark([]);
		for (const g of groupsOf(this.id)) g.classList.remove("is-moving");
	}
}

function foul(id: string, is: boolean): void {
	for (const e of [...groupsOf(id), lineOf(id)]) e?.classList.toggle("is-foul", is);
}

afterSwap((region, revision) => {
	if (region !== "drawing") return;
	shifts.settle(revision);
	underWay?.redraw();
});
