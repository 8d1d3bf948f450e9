// Package solid answers: do two bodies overlap, by how much, which is the cheapest way out, how far are they apart, and what space
// does a body pass through when it slides, swings or tips?
//
// A body is a union of upright convex prisms: a convex outline in the x,y plane, counter-clockwise seen from +z, between two
// heights. Prisms may be turned freely about the vertical. Round outlines are made by Circle and Arc, within or outside of the
// circle by a stated tolerance; a tilted box is cut by Tilted. Lengths are in
// one unit throughout, the caller's own, such that 1e-9 of it is nothing; angles are in radians.
//
// Two convex bodies are apart exactly when some line separates their shadows, and for polygons the lines to try are the normals
// of their edges (separating axes; here also the vertical). If none separates, the axis with the least overlap is the shortest
// way out: the Minkowski difference of two convex polygons has these normals and no others, and the origin's least distance to
// its border lies along one of them. For unions that is not so: each pair of prisms overlaps on one stretch of a straight way
// (Cyrus and Beck), and a union is out at the first place that is in no stretch. WayOut is the
// shortest of the ways along the axes; there may be a shorter one between them.
//
// Sweeps (Slid, Swung, Tipped) are covers: all of the true space is in them, and nothing of them is further from it than the
// tolerance. The exception is a slanting slide, see Slid.
//
// Outlines are clipped after Sutherland and Hodgman, Reentrant polygon clipping, Communications of the ACM 17 (1974) 32-42. For
// separating axes and Minkowski sums: Ericson, Real-Time Collision Detection (2005), sections 4.4, 5.2 and 9.5. Titles, volumes and
// pages here and at the functions are from memory. Distances, depths, volumes, ways out and sweeps are checked against shapely
// (testdata/*.py, with their inputs and answers).
//
// Range: outlines of 3 to 24 points and unions of up to 24 prisms work without allocation, greater ones work too. Outlines must
// be convex and counter-clockwise; IsConvex tells. A prism without height overlaps nothing and has volume 0.
package solid
