// What the browser predicts of many drags: a kit and drags come in as JSON, what would be fouled goes out. Run by a test that asks the
// workspace the same.

import { readFileSync, writeFileSync } from "node:fs";
import type { Kit } from "../src/kit";
import { Trial } from "../src/trial";

interface Asked {
	readonly kit: Kit;
	readonly drags: readonly { readonly fitting: string; readonly dx: number; readonly dy: number; readonly dz: number }[];
}

const [asked, answered] = process.argv.slice(2);
const { kit, drags } = JSON.parse(readFileSync(asked!, "utf8")) as Asked;
const trials = new Map<string, Trial>();
const began = performance.now();
const answers = drags.map(({ fitting, dx, dy, dz }) => {
	let trial = trials.get(fitting);
	if (!trial) trials.set(fitting, (trial = new Trial(kit, fitting)));
	const found = trial.at(trial.settled({ dx, dy, dz }));
	return { foul: found.outside || found.fouled.length > 0, outside: found.outside, fouled: found.fouled };
});
writeFileSync(answered!, JSON.stringify({ milliseconds: performance.now() - began, answers }));
