// Package outlook answers: what can a beginner know after an hour with a tape, and what should be measured next?
//
// From the answers of the first hour (build/begin) it makes the build that suits them best, has it reckoned, and says: who can lie
// which way and stand where, how much may still be taken along, what it may cost and how many weekends it may take. Then it has the
// build reckoned again with each thing that is only assumed at its least and at its most, and ranks what was assumed by how much
// that moves the first answers.
//
// # What it assumes
//
//   - Room to lie lengthwise is the finished length; across it is the finished width where it is widest in the middle of a bed 700 mm
//     wide, at the height of the shoulders of who lies on it, its top 400 mm above the load floor: so trade/fit judges a bed as well.
//   - Hours are the builder's own hands, from a table by kind of work (hours.go): estimates from memory, with the half as much
//     again that first builds take. They stand in until jobs are planned one by one. They are good to a third either way.
//   - Money is what the list costs, as the page of cost has it; what no first list has is told in words.
//   - A weekend is ten hours of work, all hands counted: common practice, no source.
//   - Where nobody has weighed the van, its mass is tried at one part in eight lighter and heavier than guessed.
//
// # How things assumed are ranked
//
// For each thing the change of every answer from its least to its most is divided by what is felt: 50 kg, 50 mm of bed, 50 mm of
// height, 0.3 m2 of floor, 150 of money, three weekends. The largest of these counts, doubled where somebody who lay, stood or was
// within the limits would no longer. One thing at a time is varied; two together may move more.
package outlook
