# The largest 3x + 2y under x + y <= 4 and x + 3y <= 6, x <= 3: 11 at (3, 1).
var x >= 0, <= 3;
var y >= 0;
maximize gain: 3*x + 2*y;
s.t. both: x + y <= 4;
s.t. second: x + 3*y <= 6;
solve;
printf '{"gain": %.12g, "x": %.12g, "y": %.12g}\n', gain, x, y;
end;
