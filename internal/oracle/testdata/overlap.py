# Two squares of side 2, the second moved by (1, 1): they share a unit square.
import json
from shapely.geometry import box

print(json.dumps({"area": box(0, 0, 2, 2).intersection(box(1, 1, 3, 3)).area}))
