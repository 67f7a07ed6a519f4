"""Writes the reference cases of this folder, apart from the engine and in another language; needs numpy.

Run by hand in this folder when a case is added: python3 derive.py, then format. The tests read only the JSON it writes. closedForms,
arc and bottomEdge are closed forms; sections and tails come from quadrature.py beside this file, which is itself held to
an ellipsoid's volume and surface (closed forms) in check_quadrature below. Lengths in metres, angles in radians.
"""

import json
from math import acos, asin, cos, gamma, pi, radians, sin, sqrt

import numpy as np

import quadrature as q

INCH = 0.0254
LENGTH, HALF = 72 * INCH, 10 * INCH


def write(name, record):
    with open(name, "w", encoding="utf-8") as file:
        json.dump(record, file, indent=2, ensure_ascii=False)
        file.write("\n")


def digits(number):
    return float(f"{number:.9g}")


# --- outlines ------------------------------------------------------------------------------------------------------------
# Each is a share of the widest half-width over s = 2 xi - 1, from -1 at the tail to 1 at the nose; `cut` leaves off so much
# of the tail, as a share of the whole family's length.
def share(outline, xi):
    xi = outline.get("cut", 0) + (1 - outline.get("cut", 0)) * xi
    s = np.abs(2 * xi - 1)
    if outline["family"] == "lame":
        return np.maximum(0, 1 - s ** outline["exponent"]) ** (1 / outline["exponent"])
    if outline["family"] == "parabola":
        return 1 - s**2
    return np.maximum(0, np.sin(pi * xi)) ** outline["power"]


def mean_share(outline):
    """The plan area over length times widest width, in closed form."""
    start = 2 * outline.get("cut", 0) - 1
    if outline["family"] == "parabola":
        return ((1 - 1 / 3) - (start - start**3 / 3)) / (1 - start)
    if outline["family"] == "sine-power":
        assert start == -1
        p = outline["power"]
        return gamma((p + 1) / 2) / (sqrt(pi) * gamma(p / 2 + 1))
    n = outline["exponent"]
    if start == -1:
        return gamma(1 + 1 / n) ** 2 / gamma(1 + 2 / n)
    assert n == 2
    return (pi / 4 - (start * sqrt(1 - start**2) + asin(start)) / 2) / (1 - start)


ROUND = {"nose": "round", "tail": {"kind": "round"}}
POINTED = {"nose": "pointed", "tail": {"kind": "pin"}}
ELLIPSE = {"family": "lame", "exponent": 2}


def square(outline, half, nose):
    return {"nose": nose, "tail": {"kind": "square", "widthM": 2 * half * float(share(outline, 0.0))}}


OUTLINES = [
    ("ellipse", ELLIPSE, ROUND, "pi/4 of its box"),
    ("Lamé curve, exponent 2.5", {"family": "lame", "exponent": 2.5}, ROUND, "gamma(1.4)^2 / gamma(1.8) of its box"),
    ("parabola (Wigley's waterplane)", {"family": "parabola"}, POINTED, "2/3 of its box: area coefficient 2/3"),
    ("power 0.6 of a sine", {"family": "sine-power", "power": 0.6}, ROUND,
     "gamma(0.8) / (sqrt(pi) gamma(1.3)) of its box (Euler's beta)"),
    ("power 0.8 of a sine", {"family": "sine-power", "power": 0.8}, POINTED,
     "gamma(0.9) / (sqrt(pi) gamma(1.4)) of its box (Euler's beta)"),
    ("ellipse cut square at the tail", {"family": "lame", "exponent": 2, "cut": 0.05}, "round",
     "the ellipse's segment: pi/4 - (s0 sqrt(1 - s0^2) + asin s0)/2, s0 = -0.9"),
    ("parabola cut square at the tail", {"family": "parabola", "cut": 0.12}, "pointed",
     "[s - s^3/3] from s0 = -0.76 to 1"),
]


def closed_forms():
    thickness = 0.06
    cases = []
    for name, outline, ends, how in OUTLINES:
        if isinstance(ends, str):
            ends = square(outline, HALF, ends)
        area = mean_share(outline) * LENGTH * 2 * HALF
        cases.append({
            "name": name, "how": how,
            "inputs": {"lengthM": LENGTH, "halfWidthM": HALF, "outline": outline, **ends,
                       "thickness": {"mostM": thickness, "lost": 0}},
            "expected": {"planAreaM2": digits(area), "volumeM3": digits(pi / 4 * thickness * area)},
        })
    for lost in (0.7, 1.0):
        # Thickness t0 (1 - lost s^2) over an ellipse: the mean of (1 - lost s^2) sqrt(1 - s^2) is pi/4 - lost pi/16.
        # Over a parabola: the mean of (1 - lost s^2)(1 - s^2) is 2/3 - lost 2/15.
        for name, outline, ends, mean in (("ellipse", ELLIPSE, ROUND, pi / 4 - lost * pi / 16),
                                          ("parabola", {"family": "parabola"}, POINTED, 2 / 3 - lost * 2 / 15)):
            cases.append({
                "name": f"{name}, thickness a parabola that loses {lost} of itself to the ends",
                "how": "section area pi/4 · width · thickness, integrated along the board",
                "inputs": {"lengthM": LENGTH, "halfWidthM": HALF, "outline": outline, **ends,
                           "thickness": {"mostM": thickness, "lost": lost}},
                "expected": {"planAreaM2": digits(mean_share(outline) * LENGTH * 2 * HALF),
                             "volumeM3": digits(pi / 4 * thickness * mean * LENGTH * 2 * HALF)},
            })
    write("closedForms.json", {
        "source": "closed forms of plane curves, worked out in derive.py; Wigley's parabolic waterplane is a standard test form of ship hydrodynamics (from memory)",
        "confidence": "D",
        "derived": "sections of two half-ellipses (apex 0.5, both fullnesses 2) have pi/4 of width times thickness, so that the volume follows from the plan area",
        "section": {"apex": 0.5, "deckFullness": 2, "bottomFullness": 2},
        "tolerance": {"outlineM": 0.0004, "endM": 0.003, "planAreaRelative": 0.001, "volumeRelative": 0.001},
        "whyTolerance": "declared figures of this program for readings without error: 0.4 mm from 5 to 95 % of the length is under what a pencil line shows, 3 mm in the last 5 % because no reading bounds the outline outside 3 in from the tips; areas and volumes to a tenth of a percent, a fifth of what the tape's own millimetre leaves open",
        "cases": cases,
    })


# --- sections, twist, rocker, tails -----------------------------------------------------------------------------------
def lerp(points, x):
    return np.interp(x, [p[0] for p in points], [p[1] for p in points])


def make_quadrature_board(inputs):
    length, half = inputs["lengthM"], inputs["halfWidthM"]
    outline, tail = inputs["outline"], inputs["tail"]
    start = inputs.get("outlineFromM", 0.0)

    def half_width(x):
        body = half * share(outline, np.maximum(x - start, 0) / (length - start))
        if tail["kind"] != "diamond":
            return body
        return np.where(x < start, tail["widthM"] / 2 * x / start, body)

    def notch(x):
        if tail["kind"] != "swallow":
            return 0 * x
        return np.maximum(0, tail["widthM"] / 2 * (1 - x / tail["depthM"]))

    def thickness(x):
        t = inputs["thickness"]
        return t["mostM"] * (1 - t["lost"] * (2 * x / length - 1) ** 2)

    def section(x):
        return tuple(lerp([(s.get("fromTailM", 0), s[key]) for s in inputs["sections"]], x)
                     for key in ("apex", "deckFullness", "bottomFullness"))

    def bottom(x):
        return inputs["bottoms"][0]["kind"], lerp([(s.get("fromTailM", 0), s["depthM"]) for s in inputs["bottoms"]], x)

    radius = inputs.get("rockerRadiusM")

    def rocker(x):
        return 0 * x if radius is None else radius - np.sqrt(radius**2 - (x - length / 2) ** 2)

    return q.board(length, half_width, thickness, section, bottom, rocker, inputs.get("twistRad", 0.0), notch)


def heights(b, x, y):
    """Skin to skin at one place."""
    half, h = b["half_width"](x), q.envelope_height(b, x)
    apex, nd, nb = b["section"](x)
    out = np.minimum(y / half, 1)
    top = apex * h + (1 - apex) * h * (1 - out**nd) ** (1 / nd)
    low = apex * h - apex * h * (1 - out**nb) ** (1 / nb)
    return top - np.maximum(low, q.bottom_height(b, x, y, half))


def end_area(b, inputs):
    """The flat end of a square tail, which is the section at x = 0, or both upright walls of a swallow's notch."""
    tail, count = inputs["tail"], 200000
    if tail["kind"] in ("square", "squash"):
        v, x = (np.arange(count) + 0.5) * (pi / 2) / count, np.float64(0)
        half = b["half_width"](x)
        return float(2 * (heights(b, x, half * np.sin(v)) * half * np.cos(v)).sum() * (pi / 2) / count)
    if tail["kind"] == "swallow":
        # From the tips, where the wall has no height, to the crotch; crowded at the tips, where it grows steeply.
        u = (np.arange(count) + 0.5) / count
        x = tail["depthM"] * u**3
        step = tail["depthM"] * 3 * u**2 / count
        wall = sqrt(1 + (tail["widthM"] / 2 / tail["depthM"]) ** 2)
        return float(2 * (heights(b, x, b["notch"](x)) * step).sum() * wall)
    return 0.0


def quadrature_case(name, how, **inputs):
    inputs = {"lengthM": LENGTH, "halfWidthM": HALF, "outline": ELLIPSE, **ROUND,
              "thickness": {"mostM": 0.06, "lost": 0.6}, "bottoms": [{"kind": "flat", "depthM": 0}], **inputs}
    b = make_quadrature_board(inputs)
    volume = q.volume(b)
    again = q.volume(b, 2000, 2000)
    faces = {face: q.refined_face_area(b, face) for face in ("deck", "bottom")}
    print(f"{name}: volume {volume:.8f} ± {abs(volume - again):.1e}, deck {faces['deck']}, bottom {faces['bottom']}")
    return {"name": name, "how": how, "inputs": inputs,
            "expected": {"volumeM3": digits(volume), "planAreaM2": digits(q.plan_area(b)),
                         "deckAreaM2": digits(faces["deck"][0]), "bottomAreaM2": digits(faces["bottom"][0]),
                         "endAreaM2": digits(end_area(b, inputs))}}


FULL = [{"apex": 0.4, "deckFullness": 2.6, "bottomFullness": 8}]
VARYING = [{"fromTailM": 0, "apex": 0.3, "deckFullness": 2.2, "bottomFullness": 6},
           {"fromTailM": LENGTH / 2, "apex": 0.42, "deckFullness": 2.8, "bottomFullness": 4},
           {"fromTailM": LENGTH, "apex": 0.5, "deckFullness": 2.4, "bottomFullness": 2.5}]


def depths(kind, *pairs):
    return [{"fromTailM": x, "kind": kind, "depthM": d} for x, d in pairs]


def sections():
    cut = {"family": "lame", "exponent": 2, "cut": 0.06}
    flat = {"sections": FULL}
    cases = [
        quadrature_case("flat bottom, full rails", "contract's Lamé family, constant along the board", **flat),
        quadrature_case("concave of 6 mm", "envelope t + d; bottom the higher of envelope and d (1 - (y / 0.8 b)^2)",
                        **flat, bottoms=[{"kind": "concave", "depthM": 0.006}]),
        quadrature_case("vee of 8 mm", "envelope t; bottom the higher of envelope and d |y| / b",
                        **flat, bottoms=[{"kind": "vee", "depthM": 0.008}]),
        quadrature_case("section numbers that change along the board", "straight lines between three stations",
                        sections=VARYING),
        quadrature_case("concave that comes and goes, changing sections", "depth 0 at the ends, 7 mm in the middle",
                        sections=VARYING,
                        bottoms=depths("concave", (0, 0.0), (LENGTH / 2, 0.007), (LENGTH, 0.0))),
        quadrature_case("rockered and twisted", "bottom an arc of 4 m radius, tail turned 2 degrees against the nose",
                        **flat, rockerRadiusM=4.0, twistRad=radians(2)),
        quadrature_case("rockered, twisted, vee at the tail", "arc of 3.5 m radius, 1.5 degrees, vee 9 mm fading to the nose",
                        sections=VARYING, rockerRadiusM=3.5, twistRad=radians(-1.5),
                        bottoms=depths("vee", (0, 0.009), (LENGTH, 0.0))),
        quadrature_case("parabola of a pin, concave", "pointed at both ends", outline={"family": "parabola"}, **POINTED,
                        sections=FULL, bottoms=depths("concave", (0, 0.0), (LENGTH / 2, 0.005), (LENGTH, 0.0))),
    ]
    width = 2 * HALF * float(share(cut, 0.0))
    tails = [
        quadrature_case("square tail", "flat end: the section at the tail", **flat, outline=cut, nose="round",
                        tail={"kind": "square", "widthM": width}, rockerRadiusM=5.0),
        quadrature_case("swallow tail", "notch: a triangle from the tips to the crotch, cut out of the square tail; the end is the notch's two walls",
                        **flat, outline=cut, nose="round", tail={"kind": "swallow", "widthM": width, "depthM": 0.11},
                        rockerRadiusM=5.0),
        quadrature_case("diamond tail", "straight lines from the tip to the corners, the outline from there on",
                        **flat, outline=cut, outlineFromM=0.05, nose="round",
                        tail={"kind": "diamond", "widthM": width, "depthM": 0.05}, rockerRadiusM=5.0),
    ]
    head = {
        "source": "midpoint quadrature of the contract's section family on the true functions, quadrature.py, 4000 x 4000 strips and up to 2.1 million triangles a face, their limit by two sizes; quadrature.py meets an ellipsoid's volume and surface within 1e-6",
        "confidence": "D",
        "places": "read exactly at 3, 6, 12, 24 in from each end and the middle, the rocker at the tips too; half-widths at the apex",
    }
    why = "the readings bound the outline, thickness and rocker but do not fix them past 3 in from the tips: 0.1 % of volume and plan area, 0.2 % of skin; the quadrature itself is good to 2e-6"
    tolerance = {"volumeRelative": 0.001, "planAreaRelative": 0.001, "skinRelative": 0.002, "endAreaRelative": 0.005}
    write("sections.json", {**head, "tolerance": tolerance, "whyTolerance": why, "cases": cases})
    write("tails.json", {**head, "tolerance": tolerance, "whyTolerance": why + "; the end's area follows the one tail width and the thickness carried out from 3 in", "cases": tails})


# --- tape and straight -----------------------------------------------------------------------------------------------
def arc():
    cases = []
    for inches, radius in ((70, 4.0), (70, 5.0), (70, 6.0), (70, 9.0), (110, 9.0), (110, 12.0)):
        length = inches * INCH
        to_tail = asin(length / 2 / radius)
        straight = [length * k / 20 for k in range(21)]
        cases.append({
            "name": f"{inches} in on an arc of {radius:g} m radius",
            "inputs": {"lengthM": length, "rockerRadiusM": radius, "tapeM": 0.0001},
            "expected": {
                "lengthTapeM": digits(2 * radius * to_tail),
                "profile": [{"fromTailM": digits(x),
                             "fromTailTapeM": digits(radius * (asin((x - length / 2) / radius) + to_tail)),
                             "rockerM": digits(radius - sqrt(radius**2 - (x - length / 2) ** 2))} for x in straight],
            },
        })
    write("arc.json", {
        "source": "a bottom bent to an arc of a circle: along the tape s = R (asin((x - L/2)/R) + asin(L/2R)), rocker R - sqrt(R^2 - (x - L/2)^2); worked out in derive.py",
        "confidence": "D",
        "derived": "the readings have no error and the survey says so (tapeM 0.1 mm): a survey that states a millimetre asks the rocker's fit to smooth by that much",
        "tolerance": {"lengthM": 0.00005, "placeM": 0.00005},
        "whyTolerance": "declared figure of this program: 0.05 mm, a tenth of the finest division of a tape",
        "cases": cases,
    })


# --- half-widths read at the bottom's edge ----------------------------------------------------------------------------
def bottom_edge():
    """Where the lower Lamé curve |y/b|^n + |u/a|^n = 1 (u below the apex) runs at 45 degrees: |du/dy| = 1 gives
    (y/b)^(n-1) / b = (u/a)^(n-1) / a, so (u/a) = c (y/b) with c = (a/b)^(1/(n-1)), and y = b (1 + c^n)^(-1/n)."""
    cases = []
    for name, apex, n, thickness, concave in (
        ("half-ellipses", 0.5, 2.0, 0.06, 0.0), ("boxy rails", 0.4, 8.0, 0.065, 0.0),
        ("soft rails, high apex", 0.6, 2.5, 0.07, 0.0), ("concave of 6 mm", 0.4, 4.0, 0.06, 0.006),
    ):
        a = apex * (thickness + concave)
        readings = []
        for k in [3, 6, 12, 24]:
            readings += [k * INCH, LENGTH - k * INCH]
        stations = []
        for x in sorted(readings + [LENGTH / 2]):
            b = HALF * sqrt(1 - (2 * x / LENGTH - 1) ** 2)
            c = (a / b) ** (1 / (n - 1))
            stations.append({"fromTailM": digits(x), "apexHalfWidthM": digits(b),
                             "edgeHalfWidthM": digits(b * (1 + c**n) ** (-1 / n))})
        cases.append({"name": name,
                      "inputs": {"lengthM": LENGTH, "halfWidthM": HALF, "apex": apex, "bottomFullness": n,
                                 "thicknessM": thickness, "concaveM": concave},
                      "stations": stations})
    # With n = 2 the edge is b^2 / sqrt(a^2 + b^2): the general form must give it.
    first = cases[0]["stations"][0]
    b = first["apexHalfWidthM"]
    assert abs(first["edgeHalfWidthM"] - b * b / sqrt(0.03**2 + b * b)) < 1e-8
    write("bottomEdge.json", {
        "source": "declared convention: the bottom's edge is where the lower curve of the contract's section family runs at 45 degrees; derived in derive.py",
        "confidence": "D",
        "derived": "y = b (1 + c^n)^(-1/n), c = (a/b)^(1/(n-1)), a = apex times the envelope's height",
        "tolerance": {"outlineM": 0.0004, "readingM": 0.00005},
        "whyTolerance": "as for readings at the apex: 0.4 mm from 5 to 95 % of the length, here and at the stations themselves 0.05 mm, because the way from the edge to the apex is in closed form",
        "cases": cases,
    })


def check_quadrature():
    """The triaxial ellipsoid: volume 4/3 pi a b c; surface by Legendre's integrals, here by a fine midpoint sum of them."""
    a, b, c = LENGTH / 2, HALF, 0.03
    closing = lambda x: np.sqrt(np.maximum(0, 1 - (2 * x / LENGTH - 1) ** 2))
    body = q.board(LENGTH, lambda x: b * closing(x), lambda x: 2 * c * closing(x), lambda x: (0.5, 2.0, 2.0),
                   lambda x: ("flat", 0 * x), rocker=lambda x: c - c * closing(x))
    assert abs(q.volume(body, 1000, 1000) / (4 / 3 * pi * a * b * c) - 1) < 1e-9
    phi = acos(c / a)
    m = a**2 * (b**2 - c**2) / (b**2 * (a**2 - c**2))
    u = (np.arange(2_000_000) + 0.5) * phi / 2_000_000
    root = np.sqrt(1 - m * np.sin(u) ** 2)
    second, first = root.sum() * phi / 2_000_000, (1 / root).sum() * phi / 2_000_000
    surface = 2 * pi * c**2 + 2 * pi * a * b / sin(phi) * (second * sin(phi) ** 2 + first * cos(phi) ** 2)
    found = sum(q.refined_face_area(body, face)[0] for face in ("deck", "bottom"))
    assert abs(found / surface - 1) < 1e-6, found / surface - 1


if __name__ == "__main__":
    check_quadrature()
    closed_forms()
    arc()
    bottom_edge()
    sections()
