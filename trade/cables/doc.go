// Package cables answers: is the cable safe?
//
// It takes the batteries, sources of charge and circuits as the builder wrote them, and says of every cable: how thick it must be and which
// rule decides that, which fuse protects it and whether that fuse can break what the battery gives into a short, how much voltage is lost on
// the way, and what a meter should read at its end. What the builder left out is chosen, and the choice is shown as a proposal.
//
// # What it assumes
//
//   - A system of 12 V, or of 24 V where the batteries' rows say so. Shares are of 12.8 V (25.6) for what the house battery feeds, of 14 V for a line that the engine charges through, of the
//     panel's own voltage for a line from the roof.
//   - Everything that is fed runs at once, each circuit with the current that the document gives it.
//   - Copper stands at 30 °C when voltage is worked out; air is at 40 °C in furniture and 60 °C beside an engine or under a dark roof when
//     heat is judged. Resistances are the largest that IEC 60228 allows for flexible cable; sold cable is a few percent better.
//   - A circuit that feeds nothing of its own leads from the battery to the fuse board, and all others of its battery hang on it; where there are
//     several, the one whose fuse is the battery's, or else the thickest. One written for less than another circuit has lost its loads.
//   - Positive and negative are both copper, of one cross-section, along one way.
//
// The losses that are judged are those of the cables, as the standards mean it; what a meter should read counts fuses and joints too.
//
// # What it does not do
//
// Nothing here is about mains voltage: that is a licensed electrician's work by local code, and stands here as one block. Nothing claims
// conformity with a standard whose tables are quoted from memory. Starting peaks of motors are not followed in time.
//
// # Sources
//
// 33 CFR 183.425 table 5 and ISO 10133 table A.1 (current; of the two the lower), IEC 60228 (resistance), ISO 8820 (fuses), ABYC E-11 as
// suppliers quote it (fuse places), IEC 60364-4-43 (heat of a short). What each figure is known from stands beside it.
package cables
