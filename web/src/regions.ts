// Regions: parts of a page that fetch themselves again when they show something older than the newest
// revision. A region is <… data-region="notes" data-src="/region/notes?mode=day">.

import { lookAgain } from "./drawing";
import { morph } from "./morph";
import { head } from "./wire";

interface Shown {
	revision: number; // what the region shows, at least; -1 to ask for it again
	drawn: number; // what it is known to show; 0 when that is not known
	etag: string;
	wanted: number;
	flight?: Promise<void> | undefined;
}

const shown = new WeakMap<Element, Shown>();

/** Hears of a region that was swapped, and which revision it shows now. */
type Listener = (region: string, revision: number) => void;

const listeners = new Set<Listener>();

export function afterSwap(then: Listener): void {
	listeners.add(then);
}

/** The newest revision this page has heard of. */
export function newest(): number {
	return Number(document.body.dataset["revision"] ?? 0);
}

/** The revision that the drawing shows. */
export function drawnRevision(): number {
	const drawing = document.querySelector<HTMLElement>("[data-region=drawing]");
	return drawing ? stateOf(drawing).drawn : newest();
}

/** Tells of a newer revision; every region that shows an older one fetches itself. */
export async function refresh(revision: number): Promise<void> {
	if (revision > newest()) document.body.dataset["revision"] = String(revision);
	await Promise.all(all().map((region) => bring(region, newest())));
}

/** Asks for every region again, as after a sleep or when more of a revision has been worked out: what has not changed costs a line. */
export async function check(revision = newest()): Promise<void> {
	document.body.dataset["revision"] = String(Math.max(revision, newest()));
	await Promise.all(all().map((region) => {
		stateOf(region).revision = -1;
		return bring(region, newest());
	}));
}

/** Takes nothing for known any more: another run of the program answers, perhaps with an older state. */
export async function forget(revision: number): Promise<void> {
	document.body.dataset["revision"] = String(revision);
	for (const region of all()) shown.set(region, { revision: -1, drawn: 0, etag: "", wanted: 0 });
	await check(revision);
}

/** Has a region show from now on what else there is at a place. */
export function ask(region: HTMLElement, place: string): Promise<void> {
	addressed(region, place);
	stateOf(region).revision = -1;
	return bring(region, newest());
}

function addressed(region: HTMLElement, place: string): URL {
	const address = new URL(region.dataset["src"]!, location.href);
	if (!address.searchParams.getAll("open").includes(place)) address.searchParams.append("open", place);
	region.dataset["src"] = address.pathname + address.search;
	return address;
}

/** The same for one line of a region: only that line is fetched, since there may be a thousand. */
export async function open(region: HTMLElement, line: HTMLElement, place: string): Promise<void> {
	const address = addressed(region, place);
	address.searchParams.set("line", place);
	try {
		const answer = await fetch(address, { cache: "no-store", headers: head() });
		const fresh = answer.ok ? new DOMParser().parseFromString(await answer.text(), "text/html").getElementById(line.id) : null;
		if (fresh) put(line, fresh, region, stateOf(region).revision);
	} catch {
		// nobody answers: the line stays as it is
	}
}

const all = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>("[data-region][data-src]")];

function stateOf(region: HTMLElement): Shown {
	let s = shown.get(region);
	if (!s) {
		const revision = Number(document.body.dataset["drawn"] ?? newest());
		s = { revision, drawn: revision, etag: region.dataset["etag"] ?? "", wanted: 0 };
		shown.set(region, s);
	}
	return s;
}

/** Remembers which revision the page was drawn for, before news changes it. */
export function begin(): void {
	document.body.dataset["drawn"] = String(newest());
	for (const region of all()) stateOf(region);
}

/** Fetches a region until it shows the revision; done when it does, or when nobody answers. */
function bring(region: HTMLElement, revision: number): Promise<void> {
	const s = stateOf(region);
	s.wanted = Math.max(s.wanted, revision);
	if (s.revision < s.wanted) s.flight ??= fetchAll(region, s).finally(() => {
		s.flight = undefined;
		working();
	});
	working();
	return s.flight ?? Promise.resolve();
}

async function fetchAll(region: HTMLElement, s: Shown): Promise<void> {
	try {
		while (s.revision < s.wanted && region.isConnected) await fetchOnce(region, s);
	} catch {
		s.wanted = s.revision; // nobody answers: the next news asks again
	}
}

async function fetchOnce(region: HTMLElement, s: Shown): Promise<void> {
	const asked = s.wanted;
	const address = region.dataset["src"]!;
	const answer = await fetch(address, { cache: "no-store", headers: { ...head(), ...(s.etag && { "If-None-Match": s.etag }) } });
	if (!answer.ok && answer.status !== 304) throw new Error(`${answer.status}`);
	if (region.dataset["src"] !== address) return; // it is asked for more by now
	s.revision = s.drawn = Math.max(asked, Number(answer.headers.get("Revision") ?? 0));
	if (!answer.ok) return;
	s.etag = answer.headers.get("ETag") ?? "";
	swap(region, await answer.text(), s.revision);
}

function swap(region: HTMLElement, text: string, revision: number): void {
	const page = new DOMParser().parseFromString(text, "text/html");
	const name = region.dataset["region"]!;
	const fresh = page.querySelector(`[data-region="${CSS.escape(name)}"]`);
	if (!fresh) return;
	put(region, fresh, region, revision);
}

/** Makes a region, or a part of it, equal to what came, and leaves the focus where it is. */
function put(shown: Element, fresh: Element, region: HTMLElement, revision: number): void {
	const focused = document.activeElement;
	morph(shown, fresh);
	if (focused instanceof HTMLElement && focused !== document.activeElement && focused.isConnected) focused.focus({ preventScroll: true });
	lookAgain();
	for (const then of listeners) then(region.dataset["region"]!, revision);
}

/** Says for as long as it lasts that something shown is older than the newest revision. */
function working(): void {
	document.body.classList.toggle("is-working", all().some((region) => stateOf(region).flight !== undefined));
}
