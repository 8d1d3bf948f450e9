// A page may outlive the run of the program that made it. When another run answers, the page is loaded anew, since an older state of the
// build may have been put back meanwhile; where something typed would be lost, only what can be is brought up to date. Either is said.

import { isTyped } from "./morph";
import type { Bulletin } from "./news";
import { forget } from "./regions";
import { speak } from "./speak";

const key = "tumblehome-anew";

/** Says so on a page that was loaded anew. */
export function begin(): void {
	if (!sessionStorage.getItem(key)) return;
	sessionStorage.removeItem(key);
	tell("The workspace was started again; this page is up to date.");
}

/** Whether a bulletin came from another run of the program, which then is all there is to do about it. */
export function follow(said: Bulletin): boolean {
	const { run } = document.body.dataset;
	if (!run || !said.run || said.run === run) return false;
	if (![...document.forms].some(isTyped)) {
		sessionStorage.setItem(key, "yes");
		location.reload();
		return true;
	}
	document.body.dataset["run"] = said.run;
	tell("The workspace was started again. What you typed is still here and not saved yet.");
	void forget(said.revision);
	return true;
}

let silence = false;

export function silent(now: boolean): void {
	if (now) tell("The workspace does not answer; is the program still running? Nothing is saved until it does.");
	else if (silence) band?.remove();
	silence = now;
}

let band: HTMLElement | undefined;

/** One sentence at the top of the sheet, on the page as in the ear. */
function tell(sentence: string): void {
	band ??= document.createElement("p");
	band.className = "notice told";
	band.textContent = sentence;
	document.querySelector("main")?.prepend(band);
	speak(sentence);
}
