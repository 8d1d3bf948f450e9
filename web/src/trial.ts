// A trial of some fittings, with all they carry, somewhere else or in another shape: what would they foul?
//
// Whatever overlaps already where the fitting stands is known to the server and may be meant so (a
// cushion that gives, a bed that slides into its bench): a trial reports only what gets deeper.

import { boundsOf, join, meets, overlap, still, type Bounds, type Prism, type Shift } from "./geometry";
import { carriers, family, ownerOf, type Axis, type Kit, type KitFitting, type Snap } from "./kit";
import { Room } from "./room";

/** Deeper than this by prediction is a foul [mm]: solids are rounded to 0.1, scribed faces cut to 5. */
const slack = 2;
const slackAtSurfaces = 15;

export interface Found {
	readonly fouled: readonly string[]; // the fittings it would run into, in the kit's order
	readonly outside: boolean; // it would stand out of the finished surfaces
}

/** A face to lay against, with the box of the fitting it belongs to; none for the room's. */
export interface Face extends Snap {
	readonly of?: KitFitting;
}

interface Body {
	readonly id: string;
	readonly where: string;
	readonly box: Bounds;
	readonly prisms: readonly Prism[];
	readonly boxes: readonly Bounds[];
}

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
	readonly #moving: readonly Body[];
	readonly #others: readonly Body[];
	readonly #host: KitFitting | undefined;
	readonly #before = new Map<string, number>(); // overlap where it stands, by fitting
	readonly #outBefore: number;
	#around: readonly Bounds[] | undefined;

	constructor(readonly kit: Kit, names: string | readonly string[]) {
		const ids = typeof names === "string" ? [names] : names;
		const id = ids[0] ?? "";
		this.family = family(kit, ids);
		const line = ids.length === 1 ? carriers(kit, id) : [];
		const own = ids.length === 1 ? kit.fittings.find((f) => f.id === id) : undefined;
		this.own = own;
		this.ids = ids;
		this.carried = ids.some((one) => carriers(kit, one).length > 0);
		this.#host = own?.in ? line[0] : undefined;
		const around = new Set(own?.in ? line.map((f) => f.id) : []);
		this.#moving = kit.fittings.filter((f) => this.family.has(f.id)).map(body);
		this.#others = kit.fittings.filter((f) => !this.family.has(f.id) && !around.has(f.id)).map(body);
		const chosen = kit.fittings.filter((f) => ids.includes(f.id));
		this.box = join((chosen.length > 0 ? chosen : kit.fittings.filter((f) => this.family.has(f.id))).map((f) => ({ min: f.min, max: f.max })));
		this.prisms = chosen.flatMap((f) => f.prisms);
		this.where = chosen[0]?.where ?? "";
		this.room = new Room(kit.surfaces ?? []);
		this.faces = facesOf(kit, this.family, kit.fittings.find((f) => f.id === id)?.carrier);
		for (const other of this.#others) this.#before.set(other.id, this.#depth(other, still, this.#moving));
		this.#outBefore = this.#excess(still, this.#moving);
	}

	/** What would be in the way with all of it shifted; own is the one fitting in another shape. */
	at(shift: Shift, own?: KitFitting): Found {
		const moving = own ? this.#moving.map((b) => (b.id === own.id ? body(own) : b)) : this.#moving;
		const box = own ? { min: own.min, max: own.max } : this.box;
		const fouled = this.#others
			.filter((other) => this.#depth(other, shift, moving) > this.#before.get(other.id)! + slack)
			.map((other) => other.id);
		if (this.#host && leaves(box, this.#host, shift)) fouled.push(this.#host.id);
		return { fouled, outside: this.#excess(shift, moving) > Math.max(0, this.#outBefore) + slackAtSurfaces };
	}

	/** The boxes of what stands around, in the same part of the van. */
	get around(): readonly Bounds[] {
		return (this.#around ??= this.#others.filter((b) => b.where === this.where).map((b) => b.box));
	}

	#depth(other: Body, shift: Shift, moving: readonly Body[]): number {
		let deepest = 0;
		for (const mine of moving) {
			if (mine.where !== other.where || !meets(mine.box, other.box, shift)) continue;
			mine.prisms.forEach((p, i) => {
				other.prisms.forEach((q, j) => {
					if (!meets(mine.boxes[i]!, other.boxes[j]!, shift)) return;
					deepest = Math.max(deepest, overlap(p, q, shift)?.depth ?? 0);
				});
			});
		}
		return deepest;
	}

	#excess(shift: Shift, moving: readonly Body[]): number {
		let worst = -Infinity;
		for (const mine of moving) {
			if (mine.where === "") for (const p of mine.prisms) worst = Math.max(worst, this.room.excess(p, shift));
		}
		return worst;
	}
}

/** A face narrower than this is nothing to stand against [mm]: a socket, a strip of light. */
const narrow = 60;

/** The faces that a fitting may be laid against, by axis: the room's, its carrier's, and those of what stands where it stands. */
function facesOf(kit: Kit, moving: ReadonlySet<string>, carrier: string | undefined): Record<Axis, Face[]> {
	const byId = new Map(kit.fittings.map((f) => [f.id, f]));
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

function body(f: KitFitting): Body {
	const boxes = f.prisms.map(boundsOf);
	return { id: f.id, where: f.where ?? "", box: join(boxes), prisms: f.prisms, boxes };
}

/** Whether a box that stands inside a host would leave it, if it is inside now. */
function leaves(box: Bounds, host: KitFitting, s: Shift): boolean {
	const shift = [s.dx, s.dy, s.dz];
	return shift.some((d, i) => {
		const out = Math.max(host.min[i]! - box.min[i]! - d, box.max[i]! + d - host.max[i]!);
		const now = Math.max(0, host.min[i]! - box.min[i]!, box.max[i]! - host.max[i]!);
		return out > now + slack;
	});
}
