// News: one stream for all tabs of a browser. The tab that holds the lock listens to the server and
// passes on what it hears; when it closes, the next in line takes over. Where a browser has no locks,
// every tab listens for itself. A missed message costs nothing: each says the newest revision.

export interface Bulletin {
	readonly revision: number;
	readonly stages: readonly string[];
}

interface Ear {
	readonly news: (bulletin: Bulletin) => void;
	readonly stale: () => void; // something may have been missed
}

const name = "tumblehome-news";

/** Waiting longer than this between two ticks means that the machine slept [ms]. */
const nap = 30_000;
const tick = 5_000;

export function listen(ear: Ear): void {
	const channel = "BroadcastChannel" in window ? new BroadcastChannel(name) : undefined;
	channel?.addEventListener("message", (e: MessageEvent<Bulletin>) => ear.news(e.data));
	const pass = (bulletin: Bulletin) => {
		ear.news(bulletin);
		channel?.postMessage(bulletin);
	};
	if (channel && navigator.locks) {
		navigator.locks.request(name, () => stream(pass)).catch(() => stream(pass));
	} else {
		void stream(pass);
	}
	watchSleep(ear.stale);
}

/**
 * Listens to the server for good; the promise never ends, and the lock held by it goes with the page. A
 * broken stream is opened again by the browser, one that was refused by us; the server then begins with
 * the newest revision.
 */
function stream(pass: (bulletin: Bulletin) => void): Promise<never> {
	let wait = 1_000;
	const open = () => {
		const source = new EventSource("/events");
		source.addEventListener("open", () => (wait = 1_000));
		source.addEventListener("message", (e: MessageEvent<string>) => {
			const bulletin = read(e.data);
			if (bulletin) pass(bulletin);
		});
		source.addEventListener("error", () => {
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
		return typeof said.revision === "number" ? { revision: said.revision, stages: said.stages ?? [] } : undefined;
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
