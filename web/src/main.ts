// The front end's entry. Pages read and post without it; dragging and news need it.

import * as anew from "./anew";
import * as chosen from "./chosen";
import * as drag from "./drag";
import * as flags from "./flags";
import * as forms from "./forms";
import * as gestures from "./gestures";
import * as grips from "./grips";
import * as keyboard from "./keyboard";
import * as letters from "./letters";
import * as marquee from "./marquee";
import * as measure from "./measure";
import { listen } from "./news";
import * as opens from "./opens";
import * as paper from "./paper";
import * as practice from "./practice";
import { begin as watchRegions, check, refresh } from "./regions";
import * as removal from "./removal";
import * as selection from "./selection";
import * as sight from "./sight";
import * as tools from "./tools";
import * as unfold from "./unfold";

watchRegions();
anew.begin();
paper.begin();
selection.begin();
removal.begin();
marquee.begin();
measure.begin();
drag.begin();
grips.begin();
gestures.begin();
tools.begin();
chosen.begin();
practice.begin();
keyboard.begin();
flags.begin();
forms.begin();
letters.begin();
unfold.begin();
sight.begin();
opens.begin();
selection.restore();
listen({
	news: (bulletin) => {
		if (anew.follow(bulletin)) return;
		const more = bulletin.told > Number(document.body.dataset["told"] ?? 0) && bulletin.stages.some((s) => s === "remedies" || s === "notice");
		void (more ? check(bulletin.revision) : refresh(bulletin.revision));
	},
	silent: anew.silent,
	stale: () => void check(),
});
