// The one polite live region: at most a sentence a second, and of sentences that overtake each other only the last.

const pause = 1_000;

export class Speaker {
	#next: string | undefined;
	#resting = false;

	constructor(readonly say: (sentence: string) => void) {}

	speak(sentence: string): void {
		if (!sentence) return;
		this.#next = sentence;
		if (!this.#resting) this.#utter();
	}

	#utter(): void {
		if (this.#next === undefined) {
			this.#resting = false;
			return;
		}
		this.say(this.#next);
		this.#next = undefined;
		this.#resting = true;
		setTimeout(() => this.#utter(), pause);
	}
}

const speaker = new Speaker((sentence) => {
	const region = document.querySelector(".live[role=status]");
	if (region) region.textContent = sentence;
});

export const speak = (sentence: string): void => speaker.speak(sentence);
