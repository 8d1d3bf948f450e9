// The finished surfaces of the living space, between the heights and stations at which the kit has them.

import type { Point, Prism, Shift } from "./geometry";
import type { KitSurface } from "./kit";

interface Slice {
	readonly height: number;
	readonly x: readonly number[];
	readonly left: readonly number[];
	readonly right: readonly number[];
}

export class Room {
	readonly #slices: readonly Slice[];

	constructor(surfaces: readonly KitSurface[]) {
		this.#slices = surfaces.map(slice).filter((s) => s.x.length > 1);
	}

	/** Whether anything is known of it. */
	get known(): boolean {
		return this.#slices.length > 0;
	}

	/** How far a shifted prism stands out of the room at worst [mm]; 0 or less when it is inside. */
	excess(prism: Prism, s: Shift): number {
		const first = this.#slices[0];
		const last = this.#slices.at(-1);
		if (!first || !last) return 0;
		let worst = first.height - prism.low - s.dz;
		worst = Math.max(worst, prism.high + s.dz - roofAbove(this.#slices));
		this.#touch(prism, s, (x, y, at) => {
			worst = Math.max(worst, sideAt(at, x, "left") - y, y - sideAt(at, x, "right"), first.x[0]! - x, x - first.x.at(-1)!);
		});
		return worst;
	}

	/** How far prisms, shifted, may still go to a side until one of them touches it [mm]; less than 0 when beyond. */
	gap(prisms: readonly Prism[], s: Shift, to: "left" | "right"): number {
		let least = Infinity;
		for (const prism of prisms) {
			this.#touch(prism, s, (x, y, at) => {
				const side = sideAt(at, x, to);
				least = Math.min(least, to === "left" ? y - side : side - y);
			});
		}
		return this.#slices.length > 0 ? least : Infinity;
	}

	/** The y of a side at a place. */
	side(x: number, z: number, which: "left" | "right"): number {
		return sideAt(bracket(this.#slices, z), x, which);
	}

	// touch visits the places where a prism can touch a side first: its corners, and where it
	// crosses the stations, at its ends and at the heights between.
	#touch(prism: Prism, s: Shift, visit: (x: number, y: number, at: Level) => void): void {
		const low = prism.low + s.dz;
		const high = prism.high + s.dz;
		const stations = this.#slices[0]?.x ?? [];
		const across = stations.flatMap((x) => crossings(prism.outline, x - s.dx).map((y): Point => [x, y + s.dy]));
		const level = (z: number) => {
			const at = bracket(this.#slices, z);
			for (const [x, y] of prism.outline) visit(x + s.dx, y + s.dy, at);
			for (const [x, y] of across) visit(x, y, at);
		};
		level(low);
		for (const slice of this.#slices) if (slice.height > low && slice.height < high) level(slice.height);
		level(high);
	}
}

function slice(surface: KitSurface): Slice {
	const half = surface.outline.length / 2;
	const there = surface.outline.slice(0, half);
	const back = surface.outline.slice(half).reverse();
	return { height: surface.height, x: there.map((p) => p[0]), left: there.map((p) => p[1]), right: back.map((p) => p[1]) };
}

// The kit ends at the last height below the roof: what is higher by one spacing is surely out.
function roofAbove(slices: readonly Slice[]): number {
	const last = slices.at(-1)!.height;
	const before = slices.at(-2)?.height ?? last - 150;
	return last + (last - before);
}

/** A height between two slices. */
interface Level {
	readonly low: Slice;
	readonly high: Slice;
	readonly share: number;
}

function sideAt(at: Level, x: number, which: "left" | "right"): number {
	const below = alongSlice(at.low, x, which);
	return below + at.share * (alongSlice(at.high, x, which) - below);
}

function bracket(slices: readonly Slice[], z: number): Level {
	const i = slices.findIndex((s) => s.height > z);
	const high = slices[i < 0 ? slices.length - 1 : i]!;
	const low = slices[i < 0 ? slices.length - 1 : Math.max(0, i - 1)]!;
	const span = high.height - low.height;
	return { low, high, share: span > 0 ? (z - low.height) / span : 0 };
}

function alongSlice(s: Slice, x: number, which: "left" | "right"): number {
	const y = s[which];
	let i = 1;
	while (i < s.x.length - 1 && s.x[i]! < x) i++;
	const from = s.x[i - 1]!;
	const share = Math.min(1, Math.max(0, (x - from) / (s.x[i]! - from)));
	return y[i - 1]! + share * (y[i]! - y[i - 1]!);
}

/** Where the border of an outline crosses a line of one x. */
function crossings(outline: readonly Point[], x: number): number[] {
	const found: number[] = [];
	let v = outline[outline.length - 1]!;
	for (const w of outline) {
		if (v[0] < x !== w[0] < x) found.push(v[1] + ((x - v[0]) / (w[0] - v[0])) * (w[1] - v[1]));
		v = w;
	}
	return found;
}
