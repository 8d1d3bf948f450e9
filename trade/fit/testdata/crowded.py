# What shapely says of the vans in crowded.json: the width of the widest round body that gets from outside the side door to the goal,
# its edge within 100 of it. The floor is 2900 by 1800; the door is a passage in the left side, as long as one likes.
import json
from shapely.geometry import Point, Polygon, box

def joined(free, r, door, goal):
    left = free.buffer(-r, resolution=64)
    parts = getattr(left, "geoms", [left])
    outside = Point((door[0] + door[1]) / 2, -2500)
    for part in parts:
        if not part.is_empty and part.distance(outside) < 1 and part.distance(goal) <= r + 100:
            return True
    return False

answers = []
for van in json.load(open("crowded.json")):
    door, g = van["door"], van["goal"]
    goal = box(g[0], g[2], g[1], g[3])
    free = box(0, -900, 2900, 900).union(box(door[0], -4000, door[1], -900)).difference(goal)
    for b in van["boxes"]:
        free = free.difference(Polygon(b))
    low, high = 0.0, (door[1] - door[0]) / 2 - 0.001
    if not joined(free, 0.5, door, goal):
        answers.append(0)
        continue
    while high - low > 0.02:
        mid = (low + high) / 2
        low, high = (mid, high) if joined(free, mid, door, goal) else (low, mid)
    answers.append(round(2 * low, 2))
print(json.dumps(answers))
