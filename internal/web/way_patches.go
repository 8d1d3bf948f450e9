package web

import (
	"encoding/json"
	"slices"
	"strings"

	"tumblehome/trade/runs"
)

// wayItem is a way as the document writes it.
func wayItem(corners []runs.Corner, m runs.Manner) map[string]any {
	points := make([]any, len(corners))
	for i, c := range corners {
		points[i] = map[string]any{"x": c.X, "y": c.Y, "z": c.Z}
	}
	item := map[string]any{"points": points}
	if m.Bore > 0 {
		item["bore"] = m.Bore
	}
	if m.Remark != "" {
		item["note"] = m.Remark
	}
	return item
}

// wayPatch writes a way, if there is one to write, and lets cables take it.
func wayPatch(v view, id string, item map[string]any, cables []led) string {
	patch, power := map[string]any{}, map[string]any{}
	if item != nil {
		patch["runs"] = map[string]any{id: item}
	}
	for _, c := range cables {
		take(power, c, append(slices.Clone(c.Along), id))
	}
	if len(power) > 0 {
		patch["power"] = power
	}
	return patchText(patch)
}

// take lets a cable take these ways and no others.
func take(power map[string]any, c led, along any) {
	section := strings.Split(c.Path, "/")[2]
	items, _ := power[section].(map[string]any)
	if items == nil {
		items = map[string]any{}
		power[section] = items
	}
	items[c.ID] = map[string]any{"along": along}
}

func patchText(patch any) string {
	text, err := json.Marshal(patch)
	if err != nil {
		return "" // maps, lists and numbers always marshal
	}
	return string(text)
}

// struckOut is the patch that takes a way away, also from the cables that take it.
func struckOut(v view, id string) string {
	power := map[string]any{}
	for _, c := range ledCables(v) {
		if slices.Contains(c.Along, id) {
			var rest any
			if left := slices.DeleteFunc(slices.Clone(c.Along), func(a string) bool { return a == id }); len(left) > 0 {
				rest = left
			}
			take(power, c, rest)
		}
	}
	patch := map[string]any{"runs": map[string]any{id: nil}}
	if len(power) > 0 {
		patch["power"] = power
	}
	if v.Doc.Power != nil && v.Doc.Power.Mains != nil && slices.Contains(v.Doc.Power.Mains.Value.Along, id) {
		return "" // licensed work, which is not unsaid by the way
	}
	return patchText(patch)
}
