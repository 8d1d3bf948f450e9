// A trial of some fittings, with all that goes with them, somewhere else or in another shape: what would they foul?
//
// Whatever overlaps already where the fittings stand is known to the server and may be meant so (a bed that slides into its bench): a
// trial reports only what gets deeper. What stands against a moved face goes along, and what stands against a side follows that side.

import { boundsOf, join, meets, overlap, still, type Bounds, type Prism, type Shift } from "./geometry";
import { carriers, family, indexOf, ownerOf, type Axis, type Kit, type KitFitting, type Snap } from "./kit";
import { Ordered } from "./ordered";
import { Room, type Six } from "./room";

/** Deeper than this by prediction is a foul [mm]: less is within what a body is read to. */
const slack = 4;
const slackAtSurfaces = 8;

/** Things this deep in one another only touch [mm]. */
const touching = 1;

/** How far out of the living space a drag leads at most [mm]. */
const leash = 1000;

export interface Found {
	readonly fouled: readonly string[]; // the fittings it would run into, in the kit's order
	readonly outside: boolean; // it would stand out of the finished surfaces
}

/** A face to lay against, with the box of the fitting it belongs to; none for the room's. */
export interface Face extends Snap {
	readonly of?: KitFitting;
}

/** How much of a shift a fitting takes part in, by axis: 1 or 0. */
type Share = readonly [number, number, number];

interface Body {
	readonly fitting: KitFitting;
	readonly where: string;
	readonly box: Bounds;
	readonly prisms: readonly Prism[];
	readonly boxes: readonly Bounds[];
	readonly share: Share;
	readonly gives: number; // mm
	readonly over: ReadonlySet<string>; // what carries it, at any depth
	readonly out: Six; // how far it stands out of the room already
}

/** Something that goes along, and all that it may come in the way of. */
class Moving {
	#near: readonly Body[] = [];
	#from: Shift | undefined;

	constructor(readonly body: Body, readonly rivals: readonly Body[]) {}

	/** What it can touch where a shift leads. That is looked for once a stretch of the way, since a drag asks every frame. */
	near(s: Shift): readonly Body[] {
		const from = this.#from;
		if (!from || Math.abs(s.dx - from.dx) > stretch || Math.abs(s.dy - from.dy) > stretch || Math.abs(s.dz - from.dz) > stretch) {
			const { box } = this.body;
			const wide: Bounds = { min: [box.min[0] - stretch, box.min[1] - stretch, box.min[2] - stretch], max: [box.max[0] + stretch, box.max[1] + stretch, box.max[2] + stretch] };
			this.#from = s;
			this.#near = this.rivals.filter((b) => meets(wide, b.box, against(this.body, b, s)));
		}
		return this.#near;
	}
}

/** How far something moves before it is looked again what is near [mm]. */
const stretch = 100;

export class Trial {
	readonly ids: readonly string[];
	readonly own: KitFitting | undefined; // the fitting on its way, where it is but one
	readonly family: ReadonlySet<string>;
	readonly carried: boolean; // it stands in or upon another
	readonly where: string;
	readonly box: Bounds;
	readonly prisms: readonly Prism[];
	readonly room: Room;
	readonly faces: Readonly<Record<Axis, readonly Face[]>>;
	readonly ordered: Readonly<Record<Axis, Ordered<Face>>>;
	readonly #bodies: readonly Body[];
	readonly #moving: readonly Moving[];
	readonly #inside: readonly { readonly child: Body; readonly host: Body }[]; // what stands in something, where one of the two moves
	readonly #before = new Map<Body, Map<Body, number>>(); // overlaps where all stand
	#around: readonly Bounds[] | undefined;
	#along: readonly { readonly id: string; readonly share: Share }[] | undefined;

	constructor(readonly kit: Kit, names: string | readonly string[]) {
		const ids = typeof names === "string" ? [names] : names;
		const chosen = kit.fittings.filter((f) => ids.includes(f.id));
		const own = chosen.length === 1 ? chosen[0] : undefined;
		this.ids = ids;
		this.own = own;
		this.family = family(kit, ids);
		this.carried = ids.some((one) => carriers(kit, one).length > 0);
		this.box = join((chosen.length > 0 ? chosen : kit.fittings.filter((f) => this.family.has(f.id))).map((f) => ({ min: f.min, max: f.max })));
		this.prisms = chosen.flatMap((f) => f.prisms);
		this.where = chosen[0]?.where ?? "";
		this.room = new Room(kit.surfaces ?? [], kit.limits, kit.roof, kit.closed);
		this.faces = facesOf(kit, this.family, chosen[0]?.carrier);
		this.ordered = { x: new Ordered(this.faces.x), y: new Ordered(this.faces.y), z: new Ordered(this.faces.z) };
		const share = shares(kit, ids);
		this.#bodies = kit.fittings.map((f) => body(f, share(f), this.room, new Set(carriers(kit, f.id).map((c) => c.id))));
		this.#moving = this.#bodies.filter((b) => b.share.some((part) => part > 0)).map((b) => new Moving(b, this.#bodies.filter((other) => apart(b, other))));
		const byId = new Map(this.#bodies.map((b) => [b.fitting.id, b]));
		this.#inside = this.#bodies.flatMap((child) => {
			const host = child.fitting.in ? byId.get(child.fitting.carrier ?? "") : undefined;
			const moves = host && (ids.includes(host.fitting.id) || child.share.some((one, i) => one !== host.share[i]));
			return moves ? [{ child, host }] : [];
		});
	}

	/** What goes along, with its share of the shift on each axis. */
	get along(): readonly { readonly id: string; readonly share: Share }[] {
		return (this.#along ??= this.#moving.map(({ body }) => ({ id: body.fitting.id, share: body.share })));
	}

	/** What would be in the way with all of it shifted; own is the one fitting in another shape. */
	at(shift: Shift, own?: KitFitting): Found {
		const reshaped = (b: Body): Body => (own && b.fitting.id === own.id ? { ...b, fitting: own, ...solidOf(own) } : b);
		const fouled = new Set<string>();
		let outside = false;
		for (const moving of this.#moving) {
			const { body } = moving;
			const mine = reshaped(body);
			for (const other of mine === body ? moving.near(shift) : moving.rivals) {
				const deep = depth(mine, other, shift);
				if (deep > touching + mine.gives + other.gives && deep > this.#overlapNow(body, other) + slack) fouled.add(this.family.has(other.fitting.id) ? mine.fitting.id : other.fitting.id);
			}
			const out = standsOut(mine, this.room, part(shift, mine.share));
			outside ||= out.some((by, i) => by > mine.gives && by > Math.max(0, mine.out[i]!) + slackAtSurfaces);
		}
		for (const { child, host } of this.#inside) {
			const by = part(shift, [0, 1, 2].map((i) => child.share[i]! - host.share[i]!) as [number, number, number]);
			if (leaves(boxOf(own, child), boxOf(own, host), by, child.fitting, host.fitting)) fouled.add((this.ids.includes(child.fitting.id) ? host : child).fitting.id);
		}
		return { fouled: fouled.size > 0 ? this.kit.fittings.filter((f) => fouled.has(f.id)).map((f) => f.id) : [], outside };
	}

	#overlapNow(a: Body, b: Body): number {
		let known = this.#before.get(a);
		if (!known) this.#before.set(a, (known = new Map()));
		let deep = known.get(b);
		if (deep === undefined) known.set(b, (deep = depth(a, b, still)));
		return deep;
	}

	/** A shift as far as it will be made: what stands against a surface is not dragged through it. */
	stopped(s: Shift): Shift {
		const own = this.own;
		if (!own?.stops) return s;
		const along = (axis: Axis, i: number, by: number) => {
			const stop = own.stops![axis];
			if (stop === undefined) return by;
			return own.holds[i] === "high" ? Math.min(by, stop) : Math.max(by, stop);
		};
		return { dx: along("x", 0, s.dx), dy: along("y", 1, s.dy), dz: along("z", 2, s.dz) };
	}

	/**
	 * A shift as far as the hand may drag: about the van, where the sheet still shows it. What stands farther out already may stay; towards
	 * the van it goes as if it stood where the sheet ends, since that is where it is named.
	 */
	leashed(s: Shift): Shift {
		const room = this.room.bounds;
		if (!room) return s;
		const along = (i: number, by: number) => {
			const least = room.min[i]! - leash - this.box.min[i]!;
			const most = room.max[i]! + leash - this.box.max[i]!;
			if (least > 0) return by > 0 ? Math.min(most, least + by) : 0;
			if (most < 0) return by < 0 ? Math.max(least, most + by) : 0;
			return Math.min(most, Math.max(least, by));
		};
		return { dx: along(0, s.dx), dy: along(1, s.dy), dz: along(2, s.dz) };
	}

	/** Whether one shift leads no further than another, for what it stands against. */
	stays(from: Shift, to: Shift): boolean {
		const [a, b] = [this.stopped(from), this.stopped(to)];
		return a.dx === b.dx && a.dy === b.dy && a.dz === b.dz;
	}

	/** Where a shift leads: what stands against a side or the roof keeps its distance from it. */
	settled(wanted: Shift): Shift {
		const s = this.stopped(wanted);
		const own = this.own;
		if (!own?.stops || this.where !== "" || !this.room.known || (s.dx === 0 && s.dy === 0 && s.dz === 0)) return s;
		return this.#underRoof(own, this.#alongSide(own, s));
	}

	#alongSide(own: KitFitting, s: Shift): Shift {
		const stop = own.stops?.y;
		const side = own.holds[1] === "high" ? "right" : "left";
		if (stop === undefined || (own.carrier && !indexOf(this.kit).get(own.carrier)?.scribed?.includes(side))) return s;
		if (own.scribed?.includes(side)) return { ...s, dy: s.dy + this.room.farthest(this.box, { ...s, dy: 0 }, side) - this.room.farthest(this.box, still, side) };
		const gap = this.room.gap(own.prisms, s, side);
		return { ...s, dy: side === "right" ? s.dy + gap - (stop - s.dy) : s.dy - gap + (s.dy - stop) };
	}

	#underRoof(own: KitFitting, s: Shift): Shift {
		const stop = own.stops?.z;
		if (stop === undefined || own.holds[2] !== "high" || own.carrier || own.scribed?.includes("roof")) return s;
		const headway = this.room.headway(own.prisms, s);
		return headway === undefined ? s : { ...s, dz: s.dz + headway - (stop - s.dz) };
	}

	/** The boxes of what stands around, in the same part of the van. */
	get around(): readonly Bounds[] {
		const over = new Set(this.own ? carriers(this.kit, this.own.id).map((f) => f.id) : []);
		return (this.#around ??= this.#bodies.filter((b) => b.where === this.where && !this.family.has(b.fitting.id) && !over.has(b.fitting.id)).map((b) => b.box));
	}
}

/** Which part of a shift each fitting takes: all of it what is chosen; else that of what its place is told from. */
function shares(kit: Kit, ids: readonly string[]): (f: KitFitting) => Share {
	const byId = indexOf(kit);
	const of = (f: KitFitting | undefined, axis: number, deep: number): number => {
		if (!f || deep > 64) return 0;
		if (ids.includes(f.id)) return 1;
		return of(byId.get(f.along[axis] || f.carrier || ""), axis, deep + 1);
	};
	return (f) => [of(f, 0, 0), of(f, 1, 0), of(f, 2, 0)];
}

const part = (s: Shift, share: Share): Shift => ({ dx: s.dx * share[0], dy: s.dy * share[1], dz: s.dz * share[2] });

/** Whether two can come into each other's way: neither carries the other, and they are in the same part of the van. */
function apart(a: Body, b: Body): boolean {
	if (a.fitting.id === b.fitting.id || parted(a, b) || a.over.has(b.fitting.id) || b.over.has(a.fitting.id)) return false;
	if ((a.fitting.gives ?? 0) >= 1 || (b.fitting.gives ?? 0) >= 1) return false;
	return a.share.some((one, i) => one !== b.share[i]);
}

/** Whether the skin of the van is between two. Living space and cab are one space; what sits in an opening is on both sides of the skin. */
function parted(a: Body, b: Body): boolean {
	const abroad = (c: Body): boolean => c.where === "outside" || c.where === "under";
	if (a.where === b.where || (!abroad(a) && !abroad(b))) return false;
	return !((a.where === "outside" && b.fitting.skin) || (b.where === "outside" && a.fitting.skin));
}

/** How far a shift takes a against b, each with its own part of it. */
function against(a: Body, b: Body, s: Shift): Shift {
	return { dx: s.dx * (a.share[0] - b.share[0]), dy: s.dy * (a.share[1] - b.share[1]), dz: s.dz * (a.share[2] - b.share[2]) };
}

/** How deep a is in b when both have taken their parts of a shift. */
function depth(a: Body, b: Body, s: Shift): number {
	const by = against(a, b, s);
	if (!meets(a.box, b.box, by)) return 0;
	let deepest = 0;
	a.prisms.forEach((p, i) => {
		b.prisms.forEach((q, j) => {
			if (meets(a.boxes[i]!, b.boxes[j]!, by)) deepest = Math.max(deepest, overlap(p, q, by)?.depth ?? 0);
		});
	});
	// A thing cut to the lining is of slices, none of which is deep in a soft thing: the whole of both says how deep that is pressed.
	return deepest > touching && a.gives + b.gives > 0 ? Math.max(deepest, boxDepth(a.box, b.box, by)) : deepest;
}

/** The shortest way along an axis by which one box leaves another. */
function boxDepth(a: Bounds, b: Bounds, s: Shift): number {
	return Math.min(...[s.dx, s.dy, s.dz].map((by, i) => Math.min(a.max[i]! + by - b.min[i]!, b.max[i]! - a.min[i]! - by)));
}

const sides = ["front", "rear", "left", "right", "floor", "roof"] as const;

const nowhere: Six = [0, 0, 0, 0, 0, 0];

function standsOut(b: Pick<Body, "fitting" | "where" | "prisms">, room: Room, s: Shift): Six {
	const cab = b.where === "cab";
	if (b.fitting.opening || (b.fitting.gives ?? 0) >= 1) return nowhere;
	if (b.where !== "" && !cab) return liesInside(b.fitting, room, s);
	const worst: Six = [...nowhere];
	for (const p of b.prisms) {
		const out = cab ? room.cabExcesses(p, s) : room.excesses(p, s, b.fitting.scribed ?? []);
		out.forEach((by, i) => (worst[i] = Math.max(worst[i]!, by)));
	}
	if (b.fitting.scribed) overCut(b.fitting, b.fitting.scribed, room, s, cab).forEach((by, i) => (worst[i] = Math.max(worst[i]!, by)));
	return worst;
}

/** What is said to be outside and lies inside the van has no place there; near a curve that is told a little early. */
function liesInside({ min, max }: Bounds, room: Room, s: Shift): Six {
	const deep = room.depth((min[0] + max[0]) / 2 + s.dx, (min[1] + max[1]) / 2 + s.dy, (min[2] + max[2]) / 2 + s.dz);
	return deep > room.limits.wellInside / 2 ? [0, 0, 0, 0, 0, deep] : nowhere;
}

/** How far what is cut to the lining stands out farther than one cuts off: a share of its size, and so much in any case; more is a mistake. */
function overCut(own: Bounds, scribed: readonly string[], room: Room, s: Shift, cab: boolean): Six {
	const { min, max } = own;
	const box: Prism = { outline: [[min[0], min[1]], [max[0], min[1]], [max[0], max[1]], [min[0], max[1]]], low: min[2], high: max[2] };
	const whole = cab ? room.cabExcesses(box, s) : room.excesses(box, s);
	const sideways = cab ? whole : room.excesses(room.belowShoulder(box, s), s);
	const over: Six = [0, 0, 0, 0, 0, 0];
	sides.forEach((side, i) => {
		const by = side === "left" || side === "right" ? sideways[i]! : whole[i]!;
		const axis = i >> 1;
		const cut = scribed.includes(side) ? Math.max(room.limits.cutLeast, (max[axis]! - min[axis]!) * room.limits.cutShare) : side === "roof" ? 0 : Infinity;
		if (by > cut) over[i] = by;
	});
	if (!scribed.includes("roof")) over[5] = Math.max(over[5], overFace(own, scribed, room, s));
	return over;
}

/** How far what is cut to a side, but not to the roof, stands out of the roof at its other face, or in its middle if it is cut to both. */
function overFace({ min, max }: Bounds, scribed: readonly string[], room: Room, s: Shift): number {
	const [left, right] = [scribed.includes("left"), scribed.includes("right")];
	if (!left && !right) return 0;
	return room.overRoofAlong({ min, max }, left && right ? (min[1] + max[1]) / 2 : left ? max[1] : min[1], s);
}

/** The box of a fitting, in its other shape where it has one. */
const boxOf = (own: KitFitting | undefined, b: Body): Bounds => (own?.id === b.fitting.id ? own : b.fitting);

/** A face narrower than this is nothing to stand against [mm]: a socket, a strip of light. */
const narrow = 60;

/** The faces that a fitting may be laid against, by axis: the room's, its carrier's, and those of what stands where it stands. */
function facesOf(kit: Kit, moving: ReadonlySet<string>, carrier: string | undefined): Record<Axis, Face[]> {
	const byId = indexOf(kit);
	const faces: Record<Axis, Face[]> = { x: [], y: [], z: [] };
	for (const snap of kit.snaps) {
		const owner = ownerOf(snap);
		const of = byId.get(owner);
		if (owner === "") faces[snap.axis].push(snap);
		else if (of && !moving.has(owner) && (of.id === carrier || of.carrier === carrier) && wide(of, snap.axis)) faces[snap.axis].push({ ...snap, of });
	}
	return faces;
}

function wide(f: KitFitting, axis: Axis): boolean {
	return (["x", "y", "z"] as const).every((a, i) => a === axis || f.max[i]! - f.min[i]! >= narrow);
}

function solidOf(f: KitFitting): Pick<Body, "prisms" | "boxes" | "box"> {
	const boxes = f.prisms.map(boundsOf);
	return { prisms: f.prisms, boxes, box: join(boxes) };
}

function body(fitting: KitFitting, share: Share, room: Room, over: ReadonlySet<string>): Body {
	const where = fitting.where ?? "";
	const gives = (fitting.gives ?? 0) * Math.min(...[0, 1, 2].map((i) => fitting.max[i]! - fitting.min[i]!));
	const moves = share.some((one) => one > 0);
	const out = moves ? standsOut({ fitting, where, prisms: fitting.prisms }, room, still) : nowhere;
	return { fitting, where, ...solidOf(fitting), share, gives, over, out };
}

/** Whether a box would leave its host farther than it does now, shifted against it or either of them in another shape. */
function leaves(box: Bounds, host: Bounds, s: Shift, boxNow: Bounds, hostNow: Bounds): boolean {
	return [s.dx, s.dy, s.dz].some((d, i) => {
		const low = host.min[i]! - box.min[i]! - d;
		const high = box.max[i]! + d - host.max[i]!;
		const was = Math.max(0, hostNow.min[i]! - boxNow.min[i]!, boxNow.max[i]! - hostNow.max[i]!);
		return Math.max(low, high) > was + slack;
	});
}
