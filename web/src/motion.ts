// Fittings on their way or changing shape, by pointer or by keys: drawn where they would be, tried against the kit, asked of the server,
// and in the end dropped as one edit or put back.

import { groupsOf, lineOf, mode } from "./drawing";
import * as edits from "./edits";
import { still, type Shift } from "./geometry";
import * as kits from "./kits";
import { trialOf } from "./practice";
import { Previews, type Asked } from "./preview";
import { afterSwap, newest, refresh } from "./regions";
import { stretched, turned, type Pull } from "./shape";
import * as shifts from "./shifts";
import { speak } from "./speak";
import * as strip from "./strip";
import type { Trial } from "./trial";
import type { Faces, Move, Preview } from "./wire";

let underWay: Motion | undefined;

/** The motion under way, if any. */
export const current = (): Motion | undefined => underWay;

const hearers = new Set<() => void>();

/** Hears when a motion begins and when it is over. */
export function whenMoving(then: () => void): void {
	hearers.add(then);
}

/** What is done to the fittings: all of them shifted and turned, a single one laid against faces or stretched. */
export interface Change {
	readonly shift: Shift;
	readonly turn: number;
	readonly snap: Faces;
	readonly pulls: readonly Pull[];
}

/** How long an answer waits for a moment between frames [ms]. */
const soon = 50;

const nothing: Change = { shift: still, turn: 0, snap: {}, pulls: [] };

export class Motion {
	change: Change = nothing;
	trial: Trial | undefined;
	onSwap: () => void = () => {};
	readonly #previews: Previews;
	#fouled: readonly string[] = [];
	#missed: readonly string[] = []; // fouls of the last answer that the prediction did not see
	#mistaken: readonly string[] = []; // and those that it saw and are none
	#over = false;
	#heard: Asked | undefined; // the question of the newest answer

	constructor(readonly ids: readonly string[], readonly seen = edits.seen()) {
		void underWay?.drop(); // what keys moved a moment ago is meant
		underWay = this;
		strip.clear();
		this.#previews = new Previews({ answer: (p, asked) => this.#hear(p, asked), refused: (why) => strip.refuse(why.message) });
		this.prepare();
		this.#moving(true);
		for (const then of hearers) then();
	}

	/** Makes ready to predict, once the kit is there and everything is drawn where the kit has it. */
	prepare(): void {
		const kit = shifts.unsettled() ? undefined : kits.current();
		this.trial = kit && this.ids.every((id) => kit.fittings.some((f) => f.id === id)) ? trialOf(kit, this.ids) : undefined;
		if (!kit) void kits.bring().then(() => { if (!this.trial && !this.#over && !shifts.unsettled() && kits.current()) this.prepare(); });
	}

	/** Whether it was dropped or put back. */
	get over(): boolean {
		return this.#over;
	}

	/** Where the shift leads, as far as can be told. */
	get settled(): Shift {
		return this.trial?.settled(this.change.shift) ?? this.change.shift;
	}

	/** Everything that goes along, in groups that take the same part of a shift. */
	#parts(shift: Shift): { ids: string[]; by: Shift }[] {
		const along = this.trial?.along ?? this.ids.map((id) => ({ id, share: [1, 1, 1] as const }));
		const parts = new Map<string, { ids: string[]; by: Shift }>();
		for (const { id, share } of along) {
			const key = share.join();
			const one = parts.get(key) ?? { ids: [], by: { dx: shift.dx * share[0], dy: shift.dy * share[1], dz: shift.dz * share[2] } };
			one.ids.push(id);
			parts.set(key, one);
		}
		return [...parts.values()];
	}

	#draw(shift: Shift): void {
		for (const { ids, by } of this.#parts(shift)) shifts.shift(ids, by);
	}

	to(change: Partial<Change>): void {
		this.change = { ...nothing, ...change };
		this.#draw(this.settled);
		if (this.trial) this.#mark(this.#corrected(this.#predicted(this.change)));
		strip.reckoning();
		this.#previews.want({ revision: newest(), mode: mode(), moves: this.#moves() });
	}

	/** Saves where everything is now as one edit; true if it was saved. */
	async drop(): Promise<boolean> {
		if (this.#over) return false;
		const moves = this.#moves();
		const { shift, turn, pulls } = this.change;
		const parts = this.#parts(this.settled);
		this.#end();
		if (shift.dx === 0 && shift.dy === 0 && shift.dz === 0 && turn === 0 && pulls.every((p) => p.by === 0)) {
			strip.clear();
			return false;
		}
		const held = parts.map(({ ids, by }) => shifts.hold(ids, by));
		strip.reckoning();
		const saved = await edits.told(edits.save("/edit", async (revision) => ({ revision, seen: await this.seen, mode: mode(), moves })));
		if (!saved) {
			held.forEach(shifts.release);
			return false;
		}
		for (const hold of held) hold.until = newest();
		await refresh(newest());
		shifts.settle(newest());
		return true;
	}

	cancel(): void {
		if (this.#over) return;
		this.#draw(still);
		this.#end();
		strip.clear();
	}

	/** Draws again what a drawing drawn anew has lost. */
	redraw(): void {
		this.prepare();
		this.#moving(true);
		this.#draw(this.settled);
		this.onSwap();
	}

	#moves(): Move[] {
		const { shift, turn, snap, pulls } = this.change;
		return this.ids.map((fitting) => ({ fitting, ...shift, turn, snap, ...(pulls.length > 0 && { stretch: pulls }) }));
	}

	/** What the kit says is fouled, the fittings themselves included. */
	#predicted({ shift, turn, pulls }: Change): string[] {
		const own = this.trial?.own;
		const other = own && pulls.length > 0 ? stretched(own, pulls) : own && turn !== 0 ? turned(own, turn) : undefined;
		const found = this.trial?.at(this.trial.settled(shift), other);
		return found && (found.outside || found.fouled.length > 0) ? [...found.fouled, ...this.ids] : [];
	}

	#moving(is: boolean): void {
		for (const id of this.ids) for (const g of groupsOf(id)) g.classList.toggle("is-moving", is);
	}

	/** Shows an answer between frames, since a hand that drags waits for those; what comes after the drop is of no use. */
	#hear(preview: Preview, asked: Asked): void {
		const then = () => {
			if (!this.#over && asked === this.#heard) this.#answer(preview, asked);
		};
		this.#heard = asked;
		if ("requestIdleCallback" in window) requestIdleCallback(then, { timeout: soon });
		else setTimeout(then);
	}

	// Where the server's answer and the prediction differ, the answer wins: until the next one the prediction is taken with that difference.
	#answer(preview: Preview, asked: Asked): void {
		strip.show(preview);
		speak(strip.inShort(preview));
		const first = asked.moves[0];
		const predicted = this.#predicted(first ? { ...first, shift: first, pulls: first.stretch ?? [] } : this.change);
		this.#missed = preview.fouls.filter((id) => !predicted.includes(id));
		this.#mistaken = predicted.filter((id) => !preview.fouls.includes(id));
		this.#mark(this.#corrected(this.#predicted(this.change)));
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
		this.#moving(false);
		for (const then of hearers) then();
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
