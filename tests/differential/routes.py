"""The length of a way from its geometry: docs/routes.md, PHYSICS G. Along the rope's centreline."""

import math
import tomllib

from values import length, refuse_if


def way_of(text, d):
    """The whole way of a route, and the part of it that carries the load."""
    route = tomllib.loads(f"route = {text}")["route"]
    if "points" in route:
        return both(from_point_to_point(route["points"], d))
    if "purchase" in route:
        return purchase(route, d)
    return both(LACINGS[route["lacing"]](route, d))


def smallest_sheave(text):
    route = tomllib.loads(f"route = {text}")["route"]
    sizes = [s["size"] for s in route.get("sheaves", [])] + [p["sheave"] for p in route.get("points", []) if "sheave" in p]
    return min(map(length, sizes + [route["sheave"]] if "sheave" in route else sizes), default=None)


def both(metres):
    return metres, metres


def from_point_to_point(points, d):
    """A sheave cuts its corner: R tan(phi / 2) off either leg, and an arc of R phi in their place."""
    places = [[length(x) for x in point["at"]] for point in points]
    legs = [[b - a for a, b in zip(*pair)] for pair in zip(places, places[1:])]
    total = sum(math.hypot(*leg) for leg in legs)
    cut = [0.0] * len(points)
    for i, (before, after) in enumerate(zip(legs, legs[1:]), 1):
        if "sheave" not in points[i]:
            continue
        r = (length(points[i]["sheave"]) + d) / 2
        along = sum(a * b for a, b in zip(before, after)) / math.hypot(*before) / math.hypot(*after)
        turn = math.acos(max(-1.0, min(1.0, along)))
        cut[i] = r * math.tan(turn / 2)
        total += r * turn - 2 * cut[i]
    refuse_if(any(math.hypot(*leg) < a + b for leg, a, b in zip(legs, cut, cut[1:])), 410)
    return total


def purchase(route, d):
    """As it is rigged, eased; the hand's tail carries no load."""
    parts, run = route["purchase"], length(route["run"])
    given = lambda key: length(route[key]) if key in route else 0.0
    if "sheaves" in route:
        round_sheaves = sum((length(s["size"]) + d) / 2 * math.radians(s["turn"]) for s in route["sheaves"])
    else:
        round_sheaves = (parts - 1) * math.pi * (length(route["sheave"]) + d) / 2
    loaded = parts * run - given("becket") + round_sheaves + given("lead")
    return loaded + given("tail"), loaded


def zigzag(route, d):
    gap, advance = length(route["gap"]), length(route["advance"])
    r = (length(route.get("edge", "0 mm")) + d) / 2 if "edge" in route else d / 2
    across, legs = math.hypot(gap, advance), route["legs"]
    refuse_if(across <= 2 * r, 410)
    lean = math.atan(advance / gap) - math.asin(2 * r / across)
    return legs * math.sqrt(across ** 2 - 4 * r * r) + (legs - 1) * r * (math.pi - 2 * lean)


def rail(route, d):
    gap, r = length(route["gap"]), (length(route["rail"]) + d) / 2
    refuse_if(gap <= r, 410)
    flat = 2 * math.sqrt(gap * gap - r * r) + r * (math.pi + 2 * math.asin(r / gap))
    return route["loops"] * math.hypot(flat, length(route["pitch"]))


def criss_cross(route, _d):
    gap, pitch, pairs = length(route["gap"]), length(route["pitch"]), route["pairs"]
    return gap + 2 * (pairs - 1) * math.hypot(gap, pitch)


def straight(route, _d):
    gap, pitch, pairs = length(route["gap"]), length(route["pitch"]), route["pairs"]
    return (pairs - 1) * gap + 2 * math.hypot(gap, pitch) + (pairs - 2) * math.hypot(gap, 2 * pitch)


def spiral(route, d):
    return route["turns"] * math.hypot(math.pi * (length(route["rail"]) + d), length(route["pitch"]))


LACINGS = {"zigzag": zigzag, "rail": rail, "criss-cross": criss_cross, "straight": straight, "spiral": spiral}
