// Package lining answers: what goes on the steel, and what room is left?
//
// It lays the layers of the document on each surface, bay by bay, from the
// steel inwards; says where the finished surface stands; and lists what is in it: how
// much of which material, how heavy, where.
//
// # Where the finished surface stands
//
// Ribs stand into the van, insulation lies between them, boards and battens
// lie on them. So, square to the skin, in every bay and between every two heights
// where the layers change:
//
//		t = max(depth of the ribs + strips over them, sum of what lies in the bay) + sum of what lies over the ribs
//
//	  - Insulation lies in the bay as long as nothing but insulation and patches
//	    came before it. `free` (the rule) it stops at the ribs; `bridged` a strip of at
//	    most 10 mm of it goes over their faces; `filled` it also fills their hollows.
//	  - From the first batten, board or cover on, everything lies over the ribs,
//	    further insulation too. Insulation between battens is as thick as the thicker of the two.
//	  - Patches (sound deadening) that cover only part of the steel are pressed into the
//	    insulation over them, or lie in the valleys of the floor, and add no thickness there.
//	  - A bay is as deep as its deepest rib. A surface without any layers stands at the faces of its ribs.
//	  - A side door is taken to be as deep inside as the ribs of the bay beside it;
//	    rear doors and the partition have no ribs.
//	  - Over wheel arches go covers, and insulation up to 13 mm; battens and
//	    boards stop at them.
//
// # What lies how much
//
// Net areas are those of the bare body, less openings and wheel arches, and for
// what lies between ribs less their faces. Masses are net, without waste. Materials bring their
// own spread; all of one material shares one error.
//
// # Words
//
// left, right, roof, floor, doors, front are the surfaces; doors are all doors of the
// load space, each as one bay named like its opening. x rearwards, y to the right, z up,
// in mm; thicknesses in mm, areas in m2, masses in kg.
//
// # Sources
//
// How layers meet ribs, the strip of 10 mm and the limits of the findings:
// common practice, no source.
package lining
