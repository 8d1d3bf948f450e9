// The finished surfaces of the living space, between the heights and stations at which the kit has them.

import { boundsOf, type Bounds, type Point, type Prism, type Shift } from "./geometry";
import type { KitLimits, KitRoof, KitSurface } from "./kit";

interface Slice {
	readonly height: number;
	readonly x: readonly number[];
	readonly left: readonly number[];
	readonly right: readonly number[];
}

/** A value for each of front, rear, left, right, floor and roof. */
export type Six = [number, number, number, number, number, number];

export class Room {
	readonly #slices: readonly Slice[];
	readonly #across: number[] = []; // where a prism crosses the stations, x and y in turn: kept, since a drag asks every frame

	readonly #roof: KitRoof | undefined;
	readonly #crown: number; // the highest of the roof
	readonly #lowRoof: number; // over the middle of the van, and some room

	constructor(surfaces: readonly KitSurface[], readonly limits: KitLimits, roof?: KitRoof | null, readonly closed = true) {
		this.#slices = surfaces.map(slice).filter((s) => s.x.length > 1);
		this.#roof = roof ?? undefined;
		const all = roof?.heights.flatMap((row) => row.slice(Math.floor(row.length / 4), Math.ceil((row.length * 3) / 4))) ?? [];
		this.#lowRoof = Math.min(...all) - 200;
		this.#crown = Math.max(...(roof?.heights.flat() ?? []));
	}

	/** Whether anything is known of it. */
	get known(): boolean {
		return this.#slices.length > 0;
	}

	/** The box about all of it; undefined where nothing is known. */
	get bounds(): Bounds | undefined {
		const low = this.#slices[0];
		if (!low) return undefined;
		const left = this.#slices.flatMap((s) => s.left);
		const right = this.#slices.flatMap((s) => s.right);
		const top = this.#roof ? this.#crown : this.#slices.at(-1)!.height;
		return { min: [low.x[0]!, Math.min(...left), low.height], max: [low.x.at(-1)!, Math.max(...right), top] };
	}

	/** How far a shifted prism stands out of the room at worst [mm]; 0 or less when it is inside. */
	excess(prism: Prism, s: Shift): number {
		return Math.max(...this.excesses(prism, s));
	}

	/** How far it stands out of front, rear, left, right, floor and roof. Faces that are cut to the room stand nowhere out. */
	excesses(prism: Prism, s: Shift, cut: readonly string[] = []): Six {
		const out: Six = [-Infinity, -Infinity, -Infinity, -Infinity, -Infinity, -Infinity];
		const first = this.#slices[0];
		if (!first) return out;
		out[4] = first.height - prism.low - s.dz;
		if (!cut.includes("roof")) out[5] = this.#roof ? this.#overRoof(this.#roof, prism, s) : prism.high + s.dz - roofAbove(this.#slices);
		const [noLeft, noRight] = [cut.includes("left"), cut.includes("right")];
		this.#touch(prism, s, (x, y, at) => {
			if (this.closed) out[0] = Math.max(out[0], first.x[0]! - x);
			out[1] = Math.max(out[1], x - first.x.at(-1)!);
			if (!noLeft) out[2] = Math.max(out[2], sideAt(at, x, "left") - y);
			if (!noRight) out[3] = Math.max(out[3], y - sideAt(at, x, "right"));
		});
		return out;
	}

	/** How far a prism stands out of the cab, which is taken as the front of the room carried forwards; what of it is in the room counts there. */
	cabExcesses(prism: Prism, s: Shift): Six {
		const out: Six = [-Infinity, -Infinity, -Infinity, -Infinity, -Infinity, -Infinity];
		const [front, rear] = [this.#slices[0]?.x[0], this.#slices[0]?.x.at(-1)];
		if (front === undefined || rear === undefined) return out;
		const { cabLong, cabWider } = this.limits;
		const reaches = boundsOf(prism).max[0] + s.dx > front;
		const unsure = (by: number, inCab: boolean) => (inCab && by < cabWider - nearly ? 0 : by); // nobody measured a cab
		out[5] = unsure(this.#roof ? this.#overRoof(this.#roof, prism, s) : prism.high + s.dz - roofAbove(this.#slices), !reaches);
		this.#touch(this.belowShoulder(prism, s), s, (x, y, at) => {
			out[0] = Math.max(out[0], front - cabLong - x);
			out[1] = Math.max(out[1], x - rear);
			out[2] = Math.max(out[2], unsure(sideAt(at, x, "left") - y, x < front));
			out[3] = Math.max(out[3], unsure(y - sideAt(at, x, "right"), x < front));
		});
		return out;
	}

	/** The part of a shifted prism at whose height a side is a side, and not yet the roof. */
	belowShoulder(prism: Prism, s: Shift): Prism {
		const high = Math.max(prism.low, Math.min(prism.high, this.limits.shoulder - s.dz));
		return high === prism.high ? prism : { ...prism, high };
	}

	/** How far the top of a shifted box is above the roof over a line along it. */
	overRoofAlong(box: Bounds, y: number, s: Shift): number {
		const top = box.max[2] + s.dz;
		if (!this.#roof || top < this.limits.shoulder) return -Infinity;
		let lowest = Infinity;
		const [from, to] = [box.min[0] + s.dx, box.max[0] + s.dx];
		for (let i = 0, n = steps(from, to); i <= n; i++) lowest = Math.min(lowest, roofAt(this.#roof, from + ((to - from) * i) / n, y + s.dy));
		return top - lowest;
	}

	/** How far a prism stands out of the roof, between the sides at the height of its top. */
	#overRoof(roof: KitRoof, prism: Prism, s: Shift): number {
		const top = prism.high + s.dz;
		if (top < this.#lowRoof) return -Infinity;
		if (top > this.#crown + 1) return Infinity; // there are no sides to stand within
		return top - this.#roofOver(roof, prism, s, top);
	}

	/** The lowest the roof comes over a shifted prism. */
	#roofOver(roof: KitRoof, prism: Prism, s: Shift, top: number): number {
		const box = boundsOf(prism);
		const at = bracket(this.#slices, Math.min(top, this.#slices.at(-1)!.height));
		let lowest = Infinity;
		const [front, rear, low, high] = [box.min[0] + s.dx, box.max[0] + s.dx, box.min[1] + s.dy, box.max[1] + s.dy];
		for (let i = 0, n = steps(front, rear); i <= n; i++) {
			const x = front + ((rear - front) * i) / n;
			const [left, right] = [sideAt(at, x, "left"), sideAt(at, x, "right")];
			for (let j = 0, m = steps(low, high); j <= m; j++) lowest = Math.min(lowest, roofAt(roof, x, Math.min(right, Math.max(left, low + ((high - low) * j) / m))));
		}
		return lowest;
	}

	/** How deep a place lies inside the room [mm]; less than 0 outside. */
	depth(x: number, y: number, z: number): number {
		const low = this.#slices[0];
		if (!low) return -Infinity;
		const at = bracket(this.#slices, z);
		const roof = this.#roof ? roofAt(this.#roof, x, y) : roofAbove(this.#slices);
		return Math.min(x - low.x[0]!, low.x.at(-1)! - x, y - sideAt(at, x, "left"), sideAt(at, x, "right") - y, z - low.height, roof - z);
	}

	/** How far a shifted prism may still go up [mm]; less than 0 when it is in the roof, undefined where that is not known. */
	headway(prisms: readonly Prism[], s: Shift): number | undefined {
		const roof = this.#roof;
		if (!roof || !this.known) return undefined;
		return Math.min(...prisms.map((p) => this.#roofOver(roof, p, s, p.high + s.dz) - p.high - s.dz));
	}

	/** The farthest out a side comes along a shifted box. */
	farthest(box: Bounds, s: Shift, which: "left" | "right"): number {
		let far = which === "left" ? Infinity : -Infinity;
		const [front, rear, low, high] = [box.min[0] + s.dx, box.max[0] + s.dx, box.min[2] + s.dz, box.max[2] + s.dz];
		for (let i = 0, n = steps(low, high); i <= n; i++) {
			const at = bracket(this.#slices, low + ((high - low) * i) / n);
			for (let j = 0, m = steps(front, rear); j <= m; j++) {
				const y = sideAt(at, front + ((rear - front) * j) / m, which);
				far = which === "left" ? Math.min(far, y) : Math.max(far, y);
			}
		}
		return far;
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
		const across = this.#across;
		across.length = 0;
		for (const x of this.#slices[0]?.x ?? []) crossings(prism.outline, x - s.dx, (y) => across.push(x, y + s.dy));
		const level = (z: number) => {
			const at = bracket(this.#slices, z);
			for (const [x, y] of prism.outline) visit(x + s.dx, y + s.dy, at);
			for (let i = 0; i < across.length; i += 2) visit(across[i]!, across[i + 1]!, at);
		};
		level(low);
		for (const slice of this.#slices) if (slice.height > low && slice.height < high) level(slice.height);
		level(high);
	}
}

const nearly = 8; // mm by which surfaces may be elsewhere than the kit has them
const closest = 75; // mm between places that are looked at

/** In how many steps the places from one end to the other are looked at. No list is made of them: a drag asks every frame. */
const steps = (from: number, to: number): number => Math.max(1, Math.ceil((to - from) / closest));

function roofAt(roof: KitRoof, x: number, y: number): number {
	const rows = roof.heights;
	const cell = (v: number, from: number, step: number, n: number): readonly [number, number] => {
		const at = Math.min(n - 1, Math.max(0, (v - from) / step));
		const i = Math.min(n - 2, Math.floor(at));
		return [i, at - i];
	};
	const [i, u] = cell(x, roof.from[0], roof.step[0], rows.length);
	const [j, v] = cell(y, roof.from[1], roof.step[1], rows[0]!.length);
	const along = (row: readonly number[]) => row[j]! + v * (row[j + 1]! - row[j]!);
	return along(rows[i]!) + u * (along(rows[i + 1]!) - along(rows[i]!));
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
	return between(alongSlice(at.low, x, which), alongSlice(at.high, x, which), at.share, at.high.height - at.low.height, which);
}

/** Two places nearer together than this, between which a side goes farther than that, are on both sides of a step [mm]. */
const near = 10;
const step = 20;

/** How far out a side is between two neighbours, so far apart; beside a step it is where it is farther in. */
function between(a: number, b: number, share: number, apart: number, which: "left" | "right"): number {
	if (apart < near && Math.abs(b - a) > step) return which === "left" ? Math.max(a, b) : Math.min(a, b);
	return a + share * (b - a);
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
	return between(y[i - 1]!, y[i]!, share, s.x[i]! - s.x[i - 1]!, which);
}

/** Visits where the border of an outline crosses a line of one x. */
function crossings(outline: readonly Point[], x: number, visit: (y: number) => void): void {
	let v = outline[outline.length - 1]!;
	for (const w of outline) {
		if (v[0] < x !== w[0] < x) visit(v[1] + ((x - v[0]) / (w[0] - v[0])) * (w[1] - v[1]));
		v = w;
	}
}
