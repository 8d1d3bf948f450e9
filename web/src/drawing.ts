// The drawing in the page: its views, the groups of its fittings, and where a millimetre of the van lies on the sheet.

import { still, type Shift } from "./geometry";
import type { Axis } from "./kit";

export type ViewName = "plan" | "side" | "cross";

/** One view of the drawing, in millimetres of the sheet; it has no transform of its own. */
export interface View {
	readonly name: ViewName;
	readonly element: SVGGraphicsElement;
	readonly scale: number; // sheet mm for one mm of the van
	readonly originX: number;
	readonly originY: number;
	readonly down: 1 | -1; // 1 where the second axis runs down the sheet, -1 where it runs up, as heights do
}

/** The axes of the van that run across the sheet, to the right, and along it. */
export const axesOf: Record<ViewName, readonly [across: Axis, along: Axis]> = { plan: ["x", "y"], side: ["x", "z"], cross: ["y", "z"] };

export const sheet = (): HTMLElement | null => document.querySelector<HTMLElement>(".sheet[data-region=drawing]");

export const drawing = (): SVGSVGElement | null => sheet()?.querySelector("svg") ?? null;

export const mode = (): string => document.body.dataset["mode"] ?? "";

export function views(): View[] {
	const groups = drawing()?.querySelectorAll<SVGGraphicsElement>("g[data-view][data-scale]") ?? [];
	return [...groups].map((element) => ({
		name: element.dataset["view"] as ViewName,
		element,
		scale: Number(element.dataset["scale"]),
		originX: Number(element.dataset["originX"]),
		originY: Number(element.dataset["originY"]),
		down: element.dataset["along"] === "up" || element.dataset["view"] !== "plan" ? -1 : 1,
	}));
}

export const viewOf = (part: Element): View | undefined => views().find((v) => v.element.contains(part));

const delta = { x: "dx", y: "dy", z: "dz" } as const;

/** A shift on the sheet. */
export function onSheet(v: View, s: Shift): readonly [x: number, y: number] {
	const [across, along] = axesOf[v.name];
	return [s[delta[across]] * v.scale, s[delta[along]] * v.scale * v.down];
}

/** A way on the sheet in millimetres of the van; the axis that the view does not show stays. */
export function inVan(v: View, x: number, y: number): Shift {
	const [across, along] = axesOf[v.name];
	return { ...still, [delta[across]]: x / v.scale, [delta[along]]: (y / v.scale) * v.down };
}

/** Where a flat face lies on the sheet, across or along. */
export function faceOnSheet(v: View, axis: Axis, at: number): { across: boolean; at: number } | undefined {
	const [across, along] = axesOf[v.name];
	if (axis === across) return { across: true, at: v.originX + at * v.scale };
	if (axis === along) return { across: false, at: v.originY + at * v.scale * v.down };
	return undefined;
}

/** The fitting that a part of the drawing belongs to. */
export const fittingAt = (part: Element | null): string | undefined => part?.closest<SVGElement>("svg [data-fitting]")?.dataset["fitting"];

interface Shown {
	readonly groups: SVGGraphicsElement[];
	line?: HTMLElement;
}

/** Where each fitting is shown; found anew when a region was swapped, since a drag asks every frame. */
let index: Map<string, Shown> | undefined;

function shown(id: string): Shown | undefined {
	if (!index) {
		index = new Map();
		for (const e of document.querySelectorAll<HTMLElement | SVGGraphicsElement>(".sheet svg [data-fitting], .fittings [data-fitting]")) {
			const name = e.dataset["fitting"]!;
			const s: Shown = index.get(name) ?? { groups: [] };
			if (e instanceof SVGGraphicsElement) s.groups.push(e);
			else s.line = e;
			index.set(name, s);
		}
	}
	return index.get(id);
}

/** The page was changed: fittings may be shown elsewhere. */
export function lookAgain(): void {
	index = undefined;
}

/** The groups of a fitting in all views; the group of one fitting never lies in that of another. */
export const groupsOf = (id: string): readonly SVGGraphicsElement[] => shown(id)?.groups ?? [];

/** The line of the list of fittings. */
export const lineOf = (id: string): HTMLElement | null => shown(id)?.line ?? null;

/** What the builder calls a fitting. */
export const nameOf = (id: string): string => lineOf(id)?.dataset["name"] ?? id.replaceAll("-", " ");

export function svgElement<K extends keyof SVGElementTagNameMap>(tag: K, attributes: Record<string, string> = {}): SVGElementTagNameMap[K] {
	const e = document.createElementNS("http://www.w3.org/2000/svg", tag);
	for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, value);
	return e;
}
