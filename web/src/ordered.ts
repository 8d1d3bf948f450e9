// Places on an axis, of which only a few are near: a drag asks every frame, and there are hundreds.

interface Numbered<T> {
	readonly one: T;
	readonly number: number;
}

export class Ordered<T extends { readonly at: number }> {
	readonly #sorted: readonly Numbered<T>[];

	constructor(all: readonly T[]) {
		this.#sorted = all.map((one, number) => ({ one, number })).sort((a, b) => a.one.at - b.one.at);
	}

	/** Those less than a reach away from one of some places, in the order in which they were given: the first of equals wins. */
	near(places: readonly number[], reach: number): T[] {
		const found = new Set<Numbered<T>>();
		for (const place of places) {
			for (let i = this.#from(place - reach); i < this.#sorted.length && this.#sorted[i]!.one.at < place + reach; i++) found.add(this.#sorted[i]!);
		}
		return [...found].sort((a, b) => a.number - b.number).map((n) => n.one);
	}

	/** The first one beyond a place. */
	#from(place: number): number {
		let [low, high] = [0, this.#sorted.length];
		while (low < high) {
			const middle = (low + high) >> 1;
			if (this.#sorted[middle]!.one.at <= place) low = middle + 1;
			else high = middle;
		}
		return low;
	}
}
