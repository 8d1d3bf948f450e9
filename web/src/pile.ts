// What a press means where several things lie on one another.

/** What things lie on, by their ids; nothing for what a press means at once. */
export type Bed = (id: string) => string | undefined;

/** The things of a pile in the order in which presses mean them: what a cushion lies on comes just before the cushion, seen there or not. */
export function bedsFirst(pile: readonly string[], bed: Bed): string[] {
	const out: string[] = [];
	const put = (id: string, above: readonly string[]) => {
		const host = bed(id);
		if (host !== undefined && !above.includes(host)) put(host, [...above, id]);
		if (!out.includes(id)) out.push(id);
	};
	for (const id of pile) put(id, []);
	return out;
}

/** What a press means in a place where one thing is chosen already: the thing named there, else what comes next in the pile. */
export function next(pile: readonly string[], chosen: string, named: string | undefined): string | undefined {
	if (named !== undefined && named !== chosen) return named;
	return pile[(pile.indexOf(chosen) + 1) % pile.length];
}
