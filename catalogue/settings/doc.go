// Package settings answers: what can an amateur make for a van, how big is it
// usually, and about how heavy?
//
// A setting-out is a made thing known by name: carcass, bench, slat-bed. The
// document names one after `make:`. Until its joinery is written it is an
// envelope, a box of the size given, whose mass is guessed from the envelope.
//
// # The guess
//
// Every made thing is taken as so many level panels of length times depth, so
// many upright panels along its length and so many across it, all of one
// board, and some iron (hinges, runners, screws):
//
//	mass = board * (flat*x*y + along*x*z + across*y*z) + iron
//
// The counts were chosen so that common pieces come out at the masses of
// practice (kitchen unit of 1000 x 500 x 850 in 12 mm poplar 18 to 22 kg, in
// birch 26 to 32; overhead locker 8 to 12 kg a metre); those are from memory.
// The guess is good to about 30 % either way and is always marked as one.
//
// Sizes are the common practice of small vans, from memory: x along the side it
// stands against, y its depth into the room, z its height.
package settings
