// Mesh for hat.pro: gmsh -2 -format msh22 hat.geo -o hat.msh   (gmsh 4.8.4)
// Lines through every edge of the detail, in metres; surface (i, j) is physical surface 100 + 10 j + i.
x() = {0, 0.019, 0.020, 0.035, 0.300};
y() = {0, 0.001, 0.002, 0.030, 0.031, 0.041, 0.045};
nx = #x(); ny = #y();
For j In {0:ny-1}
  For i In {0:nx-1}
    lc = 0.0015;
    If (x(i) > 0.1)
      lc = 0.008;
    EndIf
    Point(1 + j*nx + i) = {x(i), y(j), 0, lc};
  EndFor
EndFor
For j In {0:ny-1}
  For i In {0:nx-2}
    Line(1000 + j*nx + i) = {1 + j*nx + i, 2 + j*nx + i};
  EndFor
EndFor
For j In {0:ny-2}
  For i In {0:nx-1}
    Line(2000 + j*nx + i) = {1 + j*nx + i, 1 + (j+1)*nx + i};
  EndFor
EndFor
For j In {0:ny-2}
  For i In {0:nx-2}
    Curve Loop(3000 + j*nx + i) = {1000 + j*nx + i, 2001 + j*nx + i, -(1000 + (j+1)*nx + i), -(2000 + j*nx + i)};
    Plane Surface(4000 + j*nx + i) = {3000 + j*nx + i};
    Physical Surface(100 + 10*j + i) = {4000 + j*nx + i};
  EndFor
EndFor
Physical Curve(1) = {1000:1000+nx-2};                          // outside
Physical Curve(2) = {1000+(ny-1)*nx:1000+(ny-1)*nx+nx-2};      // inside
