# What scipy says of the floor in floor.txt: the squared distance of every free cell to the nearest that is not, in cells.
import json
from numpy import array, rint
from scipy.ndimage import distance_transform_edt

rows = open("floor.txt").read().split("\n")[1:]
free = array([[c == "." for c in row] for row in rows if row])
print(json.dumps([int(v) for v in rint(distance_transform_edt(free) ** 2).ravel()]))
