"""Volume, plan area and skin of a board by brute force, straight from the contract's definitions; needs numpy.

Shares no code and no method with the engine: sections are cut into midpoint strips for the volume, and the skin is laid
with flat triangles between points spaced by the polar angle of each Lamé curve. Frame: x from the tail to the nose, y to
the left, z up. Thickness and rocker are vertical at the centreline, sections stand square to the straightedge.
"""

import numpy as np


def board(length, half_width, thickness, section, bottom, rocker=lambda x: 0 * x, twist=0.0, notch=lambda x: 0 * x):
    """half_width, thickness, rocker, notch: functions of x. section: x -> (apex, nd, nb). bottom: x -> (kind, depth)."""
    return dict(length=length, half_width=half_width, thickness=thickness, section=section, bottom=bottom,
                rocker=rocker, twist=twist, notch=notch)


def cosine_nodes(length, count):
    """Nodes that crowd towards both ends, where outlines close steeply."""
    return length * (1 - np.cos(np.pi * np.arange(count + 1) / count)) / 2


def envelope_height(b, x):
    kind, depth = b["bottom"](x)
    return b["thickness"](x) + (depth if kind == "concave" else 0 * x)


def bottom_height(b, x, y, half):
    """The bottom's own curve over the envelope's foot: a concave stands over the rails, a vee's middle on the foot."""
    kind, depth = b["bottom"](x)
    if kind == "concave":
        return depth * (1 - (y / (0.8 * half)) ** 2)
    if kind == "vee":
        return depth * np.abs(y) / half
    return 0 * y


def volume(b, along=4000, across=4000):
    """Midpoint rule in the angles u and v with x = L (1 - cos u)/2 and y = half-width sin v."""
    u = (np.arange(along) + 0.5) * np.pi / along
    v = (np.arange(across) + 0.5) * (np.pi / 2) / across
    total = 0.0
    for ui in u:
        x = b["length"] * (1 - np.cos(ui)) / 2
        half = b["half_width"](x)
        h = envelope_height(b, x)
        apex, nd, nb = b["section"](x)
        y = half * np.sin(v)
        share = np.sin(v)
        top = apex * h + (1 - apex) * h * (1 - share**nd) ** (1 / nd)
        low = apex * h - apex * h * (1 - share**nb) ** (1 / nb)
        low = np.maximum(low, bottom_height(b, x, y, half))
        inside = y >= b["notch"](x)
        strips = np.where(inside, np.maximum(top - low, 0), 0) * half * np.cos(v) * (np.pi / 2) / across
        total += 2 * strips.sum() * (b["length"] / 2) * np.sin(ui) * np.pi / along
    return total


def plan_area(b, along=400000):
    u = (np.arange(along) + 0.5) * np.pi / along
    x = b["length"] * (1 - np.cos(u)) / 2
    wide = 2 * (b["half_width"](x) - b["notch"](x))
    return float((wide * (b["length"] / 2) * np.sin(u) * np.pi / along).sum())


def skin_points(b, face, side, x, across):
    """Points of one face on one side over the rows x; columns run from the centreline (or the notch) to the rail."""
    half = b["half_width"](x)[:, None]
    h = envelope_height(b, x)[:, None]
    apex, nd, nb = (np.broadcast_to(np.asarray(p, float), x.shape)[:, None] for p in b["section"](x))
    phi = (np.pi / 2) * (1 - np.arange(across + 1) / across)[None, :]
    n = nd if face == "deck" else nb
    c, s = np.abs(np.cos(phi)), np.abs(np.sin(phi))
    c[:, 0] = 0
    s[:, -1] = 0
    radius = (c**n + s**n) ** (-1 / n)
    y = half * radius * c
    # Points inside a notch are drawn out to its wall; the rest of the row keeps its order.
    y = np.maximum(y, b["notch"](x)[:, None])
    share = np.clip(y / np.maximum(half, 1e-300), 0, 1)
    lift = np.where(y > half * radius * c, (1 - share**n) ** (1 / n), radius * s)
    if face == "deck":
        z = apex * h + (1 - apex) * h * lift
    else:
        z = apex * h - apex * h * lift
        z = np.maximum(z, bottom_height(b, x[:, None], y, np.maximum(half, 1e-300)))
    kind, depth = b["bottom"](x)
    # The bottom at the centreline stands at the rocker.
    foot = depth if kind == "concave" else 0 * x
    z = z - np.broadcast_to(foot, x.shape)[:, None]
    y = y * side
    angle = (b["twist"] * (0.5 - x / b["length"]))[:, None]
    turned_y = y * np.cos(angle) - z * np.sin(angle)
    turned_z = y * np.sin(angle) + z * np.cos(angle)
    rise = b["rocker"](x)[:, None]
    return np.stack(np.broadcast_arrays(x[:, None], turned_y, turned_z + rise), axis=-1)


def triangles_area(p):
    a, b, c, d = p[:-1, :-1], p[1:, :-1], p[:-1, 1:], p[1:, 1:]
    first = np.linalg.norm(np.cross(b - a, c - a), axis=-1)
    second = np.linalg.norm(np.cross(b - d, c - d), axis=-1)
    return float((first + second).sum() / 2)


def face_area(b, face, along=3000, across=700):
    x = cosine_nodes(b["length"], along)
    return sum(triangles_area(skin_points(b, face, side, x, across)) for side in (1, -1))


def refined_face_area(b, face):
    """Flat triangles fall short by a share that goes with the square of their size: two sizes give the limit."""
    coarse = face_area(b, face, 1500, 350)
    fine = face_area(b, face, 3000, 700)
    return fine + (fine - coarse) / 3, abs(fine - coarse) / 3
