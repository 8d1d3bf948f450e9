// While something is held by the mouse a sheet of glass lies over the page and gives the pointer its look: to say it to every line of the
// drawing would cost the first frame of a drag. Fingers have no pointer to look at, and a second one must reach the drawing.

const glass = document.createElement("div");
glass.className = "glass";

/** Lays it over the page. */
export function cover(pointer: PointerEvent, cursor = "grabbing"): void {
	if (pointer.pointerType !== "mouse") return;
	glass.style.cursor = cursor;
	document.body.append(glass);
}

/** Takes it away. */
export function uncover(): void {
	glass.remove();
}
