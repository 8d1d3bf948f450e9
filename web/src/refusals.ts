// What cannot be done to a fitting, said before it is asked: locked, bought, cut to the lining, held from face to face.

import { nameOf } from "./drawing";
import * as kits from "./kits";
import { speak } from "./speak";
import * as strip from "./strip";

/** Says something on the strip and to whoever listens. */
export function say(sentence: string): void {
	strip.tell(sentence);
	speak(sentence);
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Says why a fitting stays as it is. */
export const sayWhy = (id: string, why: string): void => say(`${capital(nameOf(id))} stays as it is: ${why}.`);

/** What is said of a press that leads nowhere. */
export const doesNotMove = (ids: readonly string[]): string =>
	`${ids.length === 1 ? capital(nameOf(ids[0]!)) : "It"} does not move that way: it stands against the wall, the floor or the roof there.`;

/** Whether some fittings are not to be moved; if so it is said why. */
export function refusesMove(ids: readonly string[]): boolean {
	const locked = kits.current()?.fittings.find((f) => f.locked && ids.includes(f.id));
	if (locked) sayWhy(locked.id, "it is locked");
	return locked !== undefined;
}

/** Whether some fittings are not to be turned; if so it is said why. */
export function refusesTurn(ids: readonly string[]): boolean {
	const held = kits.current()?.fittings.find((f) => f.noTurn && ids.includes(f.id));
	if (held) sayWhy(held.id, held.noTurn!);
	return held !== undefined;
}
