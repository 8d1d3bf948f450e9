// The keys, in short, for whoever asks.

const keys: readonly (readonly [keys: string, does: string])[] = [
	["↑ ↓ ← →", "move by 10 mm, with Shift 1, with Alt 100"],
	["Page up, Page down", "up and down, likewise"],
	["R", "turn by a quarter, with Shift by 15°"],
	["Space", "in the list: keep it chosen and go on to the next"],
	["Shift + press", "choose one more; beside all things, draw a frame round several"],
	["Ctrl + D", "another one like it"],
	["L", "lock where it is, or unlock"],
	["Delete", "take out"],
	["Enter", "type its place and size"],
	["M", "measure; Escape clears"],
	["+ − 0", "nearer, farther, the whole sheet"],
	["Space + drag", "move the paper; so do the middle button and two fingers"],
	["Alt + drag", "free of faces, ribs and whole centimetres"],
	["Escape", "put back what is being moved; choose nothing"],
	["Ctrl + Z, Ctrl + Y", "take back, bring back"],
	["?", "this list"],
];

export function keysList(): HTMLElement {
	const section = document.createElement("section");
	section.className = "keys";
	section.hidden = true;
	section.setAttribute("aria-label", "The keys");
	const list = document.createElement("dl");
	for (const [key, does] of keys) {
		const pair = document.createElement("div");
		const dt = document.createElement("dt");
		const dd = document.createElement("dd");
		dt.textContent = key;
		dd.textContent = does;
		pair.append(dt, dd);
		list.append(pair);
	}
	section.append(list);
	return section;
}
