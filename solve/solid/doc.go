// Package solid answers: do two bodies overlap, by how much, which is the cheapest way out, and how far are they apart?
//
// A body is a union of upright convex prisms: a convex outline in the x,y plane, counter-clockwise seen from +z, between two
// heights. Prisms may be turned freely about the vertical; anything else (a tilted board, a curved face) is cut into prisms by
// the caller. Lengths are in one unit throughout, the caller's own.
//
// Two convex bodies are apart exactly when some line separates their shadows, and for polygons the lines to try are the normals
// of their edges (separating axes; here also the vertical). If none separates, the axis with the least overlap is the shortest
// way out: the Minkowski difference of two convex polygons has these normals and no others, and the origin's least distance to
// its border lies along one of them. Outlines are clipped after Sutherland and Hodgman, Reentrant polygon clipping,
// Communications of the ACM 17 (1974) 32-42. For separating axes and Minkowski sums: Ericson, Real-Time Collision Detection
// (2005), sections 4.4, 5.2 and 9.5.
//
// Range: outlines of 3 to 24 points work without allocation, longer ones work too. Outlines must be convex and
// counter-clockwise; IsConvex tells. A prism without height overlaps nothing and has volume 0.
package solid
