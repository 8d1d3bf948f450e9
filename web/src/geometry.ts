// Do two upright convex prisms share space, and which is the shortest way out?
//
// The browser's copy of solve/solid: separating axes, tested on the same golden pairs. It only
// predicts while the pointer moves; the server's answer wins. Lengths are in millimetres of the
// document: x rearwards, y to the right, z up.

export type Point = readonly [x: number, y: number];

/** An outline, convex and counter-clockwise in x and y, between two heights. */
export interface Prism {
	readonly outline: readonly Point[];
	readonly low: number;
	readonly high: number;
}

export interface Shift {
	readonly dx: number;
	readonly dy: number;
	readonly dz: number;
}

/** A unit direction and how far to go along it. */
export interface Way {
	x: number;
	y: number;
	z: number;
	depth: number;
}

export interface Bounds {
	readonly min: readonly [number, number, number];
	readonly max: readonly [number, number, number];
}

export const still: Shift = { dx: 0, dy: 0, dz: 0 };

/** The shortest way for a, shifted, to leave b; undefined when they share no space. */
export function overlap(a: Prism, b: Prism, shift: Shift = still): Way | undefined {
	const up = b.high - a.low - shift.dz;
	const down = a.high + shift.dz - b.low;
	const solid = a.high > a.low && b.high > b.low && a.outline.length > 2 && b.outline.length > 2;
	if (!(up > 0 && down > 0 && solid)) return undefined;
	const out: Way = down < up ? { x: 0, y: 0, z: -1, depth: down } : { x: 0, y: 0, z: 1, depth: up };
	const apart = !tryEdges(a.outline, b.outline, -1, shift, out) || !tryEdges(b.outline, a.outline, 1, shift, out);
	return apart ? undefined : out;
}

// tryEdges lowers out to the least overlap along the outward normals of p's edges; false when one
// separates p and q. The sign says which way the first body leaves: against the normal if p is the
// first body, with it if p is the second. It is the first body that is shifted.
function tryEdges(p: readonly Point[], q: readonly Point[], sign: number, shift: Shift, out: Way): boolean {
	let v = p[p.length - 1]!;
	for (const w of p) {
		let nx = w[1] - v[1];
		let ny = v[0] - w[0];
		const length = Math.sqrt(nx * nx + ny * ny);
		if (length > 0) {
			nx /= length;
			ny /= length;
			const depth = nx * v[0] + ny * v[1] - least(q, nx, ny) - sign * (nx * shift.dx + ny * shift.dy);
			if (!(depth > 0)) return false;
			if (depth < out.depth) {
				out.x = sign * nx;
				out.y = sign * ny;
				out.z = 0;
				out.depth = depth;
			}
		}
		v = w;
	}
	return true;
}

/** The least coordinate of an outline along a direction. */
function least(q: readonly Point[], nx: number, ny: number): number {
	let low = Infinity;
	for (const v of q) low = Math.min(low, nx * v[0] + ny * v[1]);
	return low;
}

export function boundsOf(prism: Prism): Bounds {
	let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
	for (const [x, y] of prism.outline) {
		minX = Math.min(minX, x);
		maxX = Math.max(maxX, x);
		minY = Math.min(minY, y);
		maxY = Math.max(maxY, y);
	}
	return { min: [minX, minY, prism.low], max: [maxX, maxY, prism.high] };
}

export function join(boxes: readonly Bounds[]): Bounds {
	const min: [number, number, number] = [Infinity, Infinity, Infinity];
	const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
	for (const box of boxes) {
		for (let i = 0; i < 3; i++) {
			min[i] = Math.min(min[i]!, box.min[i]!);
			max[i] = Math.max(max[i]!, box.max[i]!);
		}
	}
	return { min, max };
}

/** Whether box a, shifted, shares more than a face with box b. */
export function meets(a: Bounds, b: Bounds, s: Shift): boolean {
	return (
		a.min[0] + s.dx < b.max[0] && b.min[0] < a.max[0] + s.dx &&
		a.min[1] + s.dy < b.max[1] && b.min[1] < a.max[1] + s.dy &&
		a.min[2] + s.dz < b.max[2] && b.min[2] < a.max[2] + s.dz
	);
}
