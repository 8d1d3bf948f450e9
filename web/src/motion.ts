// One fitting on its way, by pointer or by keys: drawn where it would be, tried against the kit, asked of
// the server, and in the end dropped as one edit or put back.

import { groupsOf, lineOf, mode } from "./drawing";
import * as edits from "./edits";
import { still, type Shift } from "./geometry";
import * as kits from "./kits";
import { Previews } from "./preview";
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
	#over = false;

	constructor(readonly id: string) {
		underWay?.cancel();
		underWay = this;
		this.#previews = new Previews({ answer: (p) => this.#answer(p), refused: (why) => strip.refuse(why.message) });
		this.prepare();
		for (const g of groupsOf(id)) g.classList.add("is-moving");
	}

	/** Makes ready to predict, once the kit is there and everything is drawn where the kit has it. */
	prepare(): void {
		const kit = shifts.unsettled() ? undefined : kits.current();
		this.trial = kit?.fittings.some((f) => f.id === this.id) ? new Trial(kit, this.id) : undefined;
		if (!kit) void kits.bring().then(() => { if (!this.trial && !this.#over && !shifts.unsettled() && kits.current()) this.prepare(); });
	}

	get #family(): Iterable<string> {
		return this.trial?.family ?? [this.id];
	}

	to(shift: Shift, turn = 0, snap: Faces = {}): void {
		this.shift = shift;
		this.turn = turn;
		this.snap = snap;
		shifts.shift(this.#family, shift);
		if (this.trial) {
			const found = this.trial.at(shift);
			this.#mark(found.outside || found.fouled.length > 0 ? [...found.fouled, this.id] : []);
		}
		strip.reckoning();
		this.#previews.want({ revision: newest(), mode: mode(), moves: [this.#move()] });
	}

	/** Saves where the fitting is now as one edit; true if it was saved. */
	async drop(): Promise<boolean> {
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

	// Where the server's answer and the prediction differ, the answer wins.
	#answer(preview: Preview): void {
		strip.show(preview);
		speak(strip.inShort(preview));
		this.#mark(preview.fouls);
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
