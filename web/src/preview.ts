// Asks the server what a move would do, at most ten times a second; each question calls off the one before.

import { calledOff, post, Refused, type Move, type Preview } from "./wire";

const apart = 100; // ms between two questions

export interface Asked {
	readonly revision: number;
	readonly mode: string;
	readonly moves: readonly Move[];
}

export interface Answers {
	readonly answer: (preview: Preview, asked: Asked) => void;
	readonly refused: (why: Refused) => void;
}

type Ask = (question: Asked, signal: AbortSignal) => Promise<Preview>;

const overWire: Ask = (question, signal) => post<Preview>("/preview", question, signal);

export class Previews {
	#next: Asked | undefined;
	#last = -Infinity;
	#timer: ReturnType<typeof setTimeout> | undefined;
	#flight: AbortController | undefined;

	constructor(readonly to: Answers, readonly ask: Ask = overWire, readonly now: () => number = () => performance.now()) {}

	want(question: Asked): void {
		this.#next = question;
		this.#timer ??= setTimeout(() => this.#send(), Math.max(0, this.#last + apart - this.now()));
	}

	/** Calls off what is under way and what was to follow. */
	stop(): void {
		clearTimeout(this.#timer);
		this.#timer = undefined;
		this.#next = undefined;
		this.#flight?.abort();
		this.#flight = undefined;
	}

	async #send(): Promise<void> {
		const question = this.#next!;
		this.#timer = undefined;
		this.#next = undefined;
		this.#last = this.now();
		this.#flight?.abort();
		const flight = (this.#flight = new AbortController());
		try {
			const preview = await this.ask(question, flight.signal);
			if (flight === this.#flight) this.to.answer(preview, question);
		} catch (e) {
			if (flight === this.#flight && e instanceof Refused) this.to.refused(e);
			else if (!calledOff(e) && !(e instanceof Refused)) throw e;
		}
	}
}
