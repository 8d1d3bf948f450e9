// Package conduction answers: how much heat passes through a solid section, and how warm is every point of it?
//
// Solve works out the steady state of a plane section of rectangles of several conductivities, of whose surface parts
// face surroundings through a surface resistance (Robin), parts are held at a temperature (Dirichlet) and the rest
// lets nothing through. It gives heat flows, the thermal coupling coefficient L2D, the coldest and warmest spot of each
// boundary, the temperature factor fRsi, isotherms and lines of heat flow. Wall.Follow follows plane layers
// through time. AirLayer, InnerSurface and OuterSurface give what air adds.
//
// # How the steady state is found
//
// Lines through every edge cut the section into rectangular cells. On these two networks of conductances are solved.
// One keeps temperature continuous and errs towards too much heat flow, the other keeps heat balanced and errs towards
// too little; so the true L2D lies between them, their mean is reported, and half their distance bounds its error. Where
// they disagree the mesh is refined. Both networks are symmetric and positive definite with no positive entry off the
// diagonal, so no point can be warmer or colder than all that surrounds it; they are solved by Cholesky's method in a
// band. Temperatures come from the first network; their error is told by halving all cells (Richardson).
//
// A detail that repeats is drawn as half of one repeat, since a plane of symmetry lets nothing through. A Section and a
// Result are plain values that JSON keeps; the same section gives the same result to the last digit.
//
// # Units and validity
//
// Lengths m, conductivity W/(m·K), resistance m²·K/W, temperature °C, heat flow W per metre of depth, time s. Heat flow
// in the third dimension is nought. Conductivities do not vary with temperature or direction. Air moves nothing but
// within AirLayer. Contact resistance and moisture are left out unless given as regions. Slanting edges must be drawn in
// steps, which is good for bulk; a thin conducting sheet drawn so has a longer way and passes too little heat.
//
// Where two surfaces held at different temperatures meet the heat flow is endless; ask for temperatures only there.
//
// # Sources
//
// ISO 10211 (annex with reference cases 1 and 2; L2D, fRsi), ISO 6946 (air layers, surface resistances), both from
// memory where not quoted beside a test. Bounds: Dirichlet's and Thomson's principles; Prager and Synge, Quarterly
// of Applied Mathematics 5 (1947) 241-269. Refining by bulk: Dörfler, SIAM Journal on Numerical Analysis 33 (1996)
// 1106-1124. Stepping in time: Alexander, SIAM Journal on Numerical Analysis 14 (1977) 1006-1021, all from memory.
package conduction
