// The front end's entry. Pages read and post without it; dragging and news need it.

import * as drag from "./drag";
import * as flags from "./flags";
import * as forms from "./forms";
import * as gestures from "./gestures";
import * as keyboard from "./keyboard";
import { listen } from "./news";
import * as opens from "./opens";
import * as paper from "./paper";
import { begin as watchRegions, check, refresh } from "./regions";
import * as selection from "./selection";
import * as tools from "./tools";

watchRegions();
paper.begin();
selection.begin();
drag.begin();
gestures.begin();
tools.begin();
keyboard.begin();
flags.begin();
forms.begin();
opens.begin();
listen({
	news: (bulletin) => void (bulletin.stages.includes("remedies") ? check(bulletin.revision) : refresh(bulletin.revision)),
	stale: () => void check(),
});
