// Talking with the server: what goes out says that a script sends it, and what comes back is sorted.

import type { Shift } from "./geometry";
import type { Axis } from "./kit";
import type { Pull } from "./shape";

/** The faces that a fitting is laid against, by axis, as the kit names them. */
export type Faces = Readonly<Partial<Record<Axis, string>>>;

/** One fitting to be moved [mm], turned [degrees, clockwise from above] and laid against faces. */
export interface Move extends Shift {
	readonly fitting: string;
	readonly turn: number;
	readonly snap: Faces;
	readonly stretch?: readonly Pull[];
}

export interface Saved {
	readonly revision: number;
	readonly mark: string; // how a form names it
	readonly sentence: string;
	readonly made?: readonly string[] | null; // fittings that are new
}

export interface Figure {
	readonly code: string;
	readonly label: string;
	readonly words: string;
}

export interface SeenNote {
	readonly severity: string;
	readonly title: string;
}

/** What would follow from something not yet saved. */
export interface Preview {
	readonly revision: number;
	readonly figures: readonly Figure[];
	readonly appeared: readonly SeenNote[];
	readonly cleared: readonly SeenNote[];
	readonly sentence: string;
	readonly fouls: readonly string[];
}

/** Two values for one place of the document. */
export interface Clash {
	readonly place: string;
	readonly words: string;
	readonly mine: string;
	readonly theirs: string;
}

/** Why a change was not saved. */
export class Refused extends Error {
	constructor(
		readonly status: number,
		message: string,
		readonly wrong: Readonly<Record<string, string>> = {},
		readonly conflict: readonly Clash[] = [],
		readonly revision = 0,
		readonly held = false, // it would be done together with what hangs on it
	) {
		super(message);
	}
}

const silent = "The workspace does not answer. Nothing was saved; is the program still running?";

/** Says that a script asks, and from which run of the program its numbers are. */
export const head = (): Record<string, string> => ({ "X-Tumblehome": document.body.dataset["run"] ?? "1" });

/** Posts JSON, or a form as it stands; throws Refused when it was not taken, also when nobody answers. */
export async function post<T>(path: string, body: unknown, signal?: AbortSignal): Promise<T> {
	const form = body instanceof URLSearchParams;
	const answer = await reach(path, {
		method: "POST",
		headers: form ? { ...head(), Accept: "application/json" } : { ...head(), "Content-Type": "application/json", Accept: "application/json" },
		body: form ? body : JSON.stringify(body),
		keepalive: true, // what was dropped is saved although the page is being left
		signal: signal ?? null,
	});
	if (answer.ok) return (await answer.json()) as T;
	throw await refusal(answer);
}

export async function get<T>(path: string, signal?: AbortSignal): Promise<T> {
	const answer = await reach(path, { headers: head(), signal: signal ?? null });
	if (answer.ok) return (await answer.json()) as T;
	throw await refusal(answer);
}

async function reach(path: string, request: RequestInit): Promise<Response> {
	try {
		return await fetch(path, request);
	} catch (e) {
		if (request.signal?.aborted) throw e;
		throw new Refused(0, silent);
	}
}

async function refusal(answer: Response): Promise<Refused> {
	const text = await answer.text();
	try {
		const said = JSON.parse(text) as Partial<Pick<Refused, "message" | "wrong" | "conflict" | "revision" | "held">>;
		return new Refused(answer.status, said.message ?? "", said.wrong, said.conflict, said.revision, said.held);
	} catch {
		return new Refused(answer.status, text.trim() || silent);
	}
}

/** Whether this is only a request that was called off. */
export const calledOff = (e: unknown): boolean => e instanceof DOMException && e.name === "AbortError";
