// News: one stream for all tabs of a browser. The tab that holds the lock listens to the server and
// passes on what it hears; when it closes, the next in line takes over. Where a browser has no locks,
// every tab listens for itself. A missed message costs nothing: each says the newest revision.

export interface Bulletin {
	readonly revision: number;
	readonly stages: readonly string[];
	readonly run: string; // which run of the program says so
	readonly told: number; // how many it has said up to this one
}

interface Ear {
	readonly news: (bulletin: Bulletin) => void;
	readonly silent: (silent: boolean) => void; // nobody answers, or somebody does again
	readonly stale: () => void; // something may have been missed
}

const name = "tumblehome-news";

/** Waiting longer than this between two ticks means that the machine slept [ms]. */
const nap = 30_000;
const tick = 5_000;

export function listen(ear: Ear): void {
	const channel = "BroadcastChannel" in window ? new BroadcastChannel(name) : undefined;
	const hear = (said: Bulletin | boolean) => (typeof said === "boolean" ? ear.silent(said) : ear.news(said));
	channel?.addEventListener("message", (e: MessageEvent<Bulletin | boolean>) => hear(e.data));
	const pass = (said: Bulletin | boolean) => {
		hear(said);
		channel?.postMessage(said);
	};
	if (channel && navigator.locks) {
		navigator.locks.request(name, () => stream(pass)).catch(() => stream(pass));
	} else {
		void stream(pass);
	}
	watchSleep(ear.stale);
}

/** A stream may break for a moment; only what lasts is worth a word [ms]. */
const moment = 1_500;

/**
 * Listens to the server for good; the promise never ends, and the lock held by it goes with the page. A
 * broken stream is opened again by the browser, one that was refused by us; the server then begins with
 * the newest revision.
 */
function stream(pass: (said: Bulletin | boolean) => void): Promise<never> {
	let wait = 1_000;
	let silence: ReturnType<typeof setTimeout> | undefined;
	const open = () => {
		const source = new EventSource("/events");
		source.addEventListener("open", () => {
			wait = 1_000;
			clearTimeout(silence);
			silence = undefined;
			pass(false);
		});
		source.addEventListener("message", (e: MessageEvent<string>) => {
			const bulletin = read(e.data);
			if (bulletin) pass(bulletin);
		});
		source.addEventListener("error", () => {
			silence ??= setTimeout(() => pass(true), moment);
			if (source.readyState !== EventSource.CLOSED) return;
			setTimeout(open, wait);
			wait = Math.min(2 * wait, 30_000);
		});
	};
	open();
	return new Promise(() => {});
}

/** A message that is not ours is left alone. */
export function read(text: string): Bulletin | undefined {
	try {
		const said = JSON.parse(text) as Partial<Bulletin>;
		return typeof said.revision === "number" ? { revision: said.revision, stages: said.stages ?? [], run: said.run ?? "", told: said.told ?? Infinity } : undefined;
	} catch {
		return undefined;
	}
}

function watchSleep(stale: () => void): void {
	let last = Date.now();
	const awake = () => {
		const slept = Date.now() - last > nap;
		last = Date.now();
		if (slept) stale();
	};
	setInterval(awake, tick);
	document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && awake());
	window.addEventListener("pageshow", (e) => e.persisted && stale());
	window.addEventListener("online", stale);
}
