// The kit that handles and predictions are made from, with the page and the server played here.

import assert from "node:assert/strict";
import { test } from "node:test";

import * as kits from "../src/kits";

const body = { dataset: { revision: "1", mode: "day" } as Record<string, string> };
Object.assign(globalThis, { document: { body } });

test("a kit that is old when it comes is followed by a new one, and who waits hears of that", async () => {
	const answers: ((revision: number) => void)[] = [];
	Object.assign(globalThis, {
		fetch: () => new Promise((done) => answers.push((revision) => done({ ok: true, json: async () => ({ revision, fittings: [] }) }))),
	});
	const heard: (number | undefined)[] = [];
	kits.whenCame(() => heard.push(kits.current()?.revision));
	const came = kits.bring();
	body.dataset["revision"] = "2"; // saved while the kit is on its way
	answers[0]!(1);
	await new Promise((done) => setTimeout(done));
	answers[1]?.(2);
	await Promise.race([came, new Promise((done) => setTimeout(done, 50))]);
	assert.equal(answers.length, 2, "how often the kit was fetched");
	assert.deepEqual(heard, [2]);
});
