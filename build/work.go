package build

import "tumblehome/quantity"

// InStock is something in the workshop; a rough count is enough.
type InStock struct {
	Is   string           `doc:"is" ref:"row" says:"catalogue row"`
	Have *float64         `doc:"have" range:"0..10000" says:"how many"`
	Size *Size            `doc:"size" says:"size of a leftover"`
	Cuts *quantity.Length `doc:"cuts" range:"0..20" says:"width of the saw's cut, for a tool"`
	Note string           `doc:"note" says:"a remark"`
}

// Price is what something costs and how far that can be trusted.
type Price struct {
	Price    quantity.Spread[quantity.Money] `doc:"price,need" range:"0..100000" says:"price with tax, in the build's currency"`
	Each     string                          `doc:"each" says:"what one price buys: sheet, m, piece"`
	Standing string                          `doc:"standing,need" one:"guess quote paid free" says:"how sure the price is"`
	Used     *quantity.YesNo                 `doc:"used" says:"second-hand"`
	Date     *quantity.Date                  `doc:"date" says:"when it was heard or paid"`
	Shop     string                          `doc:"shop" says:"where"`
	Note     string                          `doc:"note" says:"a remark"`
}

// Job is a piece of work.
type Job struct {
	Title      string             `doc:"title" says:"what is done"`
	Planned    *quantity.Duration `doc:"planned" range:"0..1000" says:"hours planned"`
	Took       *quantity.Duration `doc:"took" range:"0..1000" says:"hours it took"`
	Done       *quantity.Date     `doc:"done" says:"day it was finished"`
	Unforeseen *quantity.YesNo    `doc:"unforeseen" says:"nobody planned it"`
	Before     []string           `doc:"before" says:"jobs that must wait for it"`
	Note       string             `doc:"note" says:"a remark"`
}

// Calendar says when work is possible.
type Calendar struct {
	Stops    map[string]DateSpan `doc:"stops" says:"times without work"`
	Barn     *DateSpan           `doc:"barn" says:"when there is a roof over the van"`
	Borrowed map[string]DateSpan `doc:"borrowed" says:"tools lent, and when"`
	Note     string              `doc:"note" says:"a remark"`
}

// DateSpan is from one day to another, both included.
type DateSpan struct {
	From *quantity.Date `doc:"from" says:"first day"`
	To   *quantity.Date `doc:"to" says:"last day"`
	Note string         `doc:"note" says:"a remark"`
}

// Spent is money paid, or received if negative.
type Spent struct {
	Date    quantity.Date   `doc:"date,need" says:"day"`
	Paid    quantity.Money  `doc:"paid,need" says:"amount; negative when money came in"`
	For     string          `doc:"for" ref:"path" says:"dotted path of what it was for"`
	On      string          `doc:"on" one:"conversion vehicle" says:"whether it counts as conversion or as vehicle; conversion if left out"`
	What    string          `doc:"what" says:"what was bought, in words"`
	Shop    string          `doc:"shop" says:"where"`
	Receipt string          `doc:"receipt" ref:"evidence" says:"the receipt"`
	Sudden  *quantity.YesNo `doc:"sudden" says:"it was not planned"`
	Note    string          `doc:"note" says:"a remark"`
}

// Accepted is a finding the builder lives with.
type Accepted struct {
	Finding string         `doc:"finding,need" says:"code of the finding"`
	About   string         `doc:"about" ref:"path" says:"dotted path of what it is about"`
	As      string         `doc:"as" one:"note close fault danger" says:"how bad it was then; if it grows worse it is told again (close if left out)"`
	Why     string         `doc:"why,need" says:"the reason"`
	Date    *quantity.Date `doc:"date" says:"when it was decided"`
}

// Alternative is a named change to compare.
type Alternative struct {
	Why     string         `doc:"why,need" says:"the question it answers"`
	By      string         `doc:"by" ref:"people" says:"whose idea it is"`
	Without []string       `doc:"without" ref:"path" says:"dotted paths removed first"`
	With    *PatchFragment `doc:"with" says:"changes merged in"`
}

// Evidence is a photo, receipt, certificate or measurement kept with the build.
type Evidence struct {
	Kind  string         `doc:"kind,need" one:"photo receipt certificate measurement" says:"what it is"`
	Date  *quantity.Date `doc:"date" says:"when"`
	Shows string         `doc:"shows" ref:"path" says:"dotted path of what it shows"`
	Note  string         `doc:"note" says:"a remark"`
}
