"""Works out the expected marks of setting-out.json by plain trigonometry, apart from the engine and in another language.

Run by hand in this folder when a case is added: python3 derive.py. The tests read only the JSON it writes. Every case says in
`how` which right triangle, circle or rotation gives its numbers. Lengths in metres, angles in radians; `in` is 0.0254 m.
"""

import json
from math import asin, atan, atan2, cos, hypot, radians, sin, sqrt, tan

INCH = 0.0254
CASES = []


def case(name, how, board, fins, marks, confidence="D", source="plane trigonometry, worked out in derive.py", **more):
    CASES.append(
        {"name": name, "source": source, "confidence": confidence, "how": how, "board": board, "fins": fins,
         "expected": {"marks": marks, **more}}
    )


def parallel(half):
    return {"kind": "parallel", "halfM": half}


def board(length, left, right=None, **more):
    return {"lengthM": length, "left": left, "right": right or left, **more}


def both(fin, mark):
    return {f"{fin}-left": mark, f"{fin}-right": mark}


def base_line(x, y, base, nose, toe):
    """All that follows from a trailing mark, a base and a toe on a straight bottom."""
    front_x, front_y = x + base * cos(toe), y - base * sin(toe)
    mark = {
        "toeRad": toe,
        "toeOverBaseM": y - front_y,
        "aimBesideNoseM": y + (nose - x) * (front_y - y) / (front_x - x),
        "trailing": {"fromTailM": x, "fromCentrelineM": y},
        "leading": {"fromTailM": front_x, "fromCentrelineM": front_y},
    }
    if toe > 0:
        mark["aimBeyondNoseM"] = x + y * (front_x - x) / (y - front_y) - nose
    elif toe <= 0:
        mark["aimBeyondNoseM"] = None
    return mark


def fin(name, up, base, rail=None, **more):
    stated = {"fin": name, "fromTailM": up, "baseM": base, **more}
    if rail is not None:
        stated["fromRailM"] = rail
    return stated


def beside(offset):
    return {"kind": "aimBesideNose", "offsetM": offset}


def beyond(distance):
    return {"kind": "aimBeyondNose", "beyondM": distance}


def over(distance):
    return {"kind": "overBase", "overM": distance}


def turned(angle):
    return {"kind": "angle", "angleRad": angle}


def centre_mark(up, base):
    return {"toeRad": 0, "aimBeyondNoseM": None, "trailing": {"fromTailM": up, "fromCentrelineM": 0},
            "leading": {"fromTailM": up + base, "fromCentrelineM": 0}}


# --- ways of stating toe -------------------------------------------------------------------------------------------------
nose, half = 72 * INCH, 7.25 * INCH
x, y, b = 11.25 * INCH, (7.25 - 1.125) * INCH, 4.5 * INCH
case("string beside the nose: the trade's own numbers",
     "right triangle from the mark to the aim: 60.75 in along, 6.125 - 2.5 in across; atan(3.625/60.75) = 3.415 degrees",
     board(nose, parallel(half)),
     {"arrangement": "twin", "sides": "average",
      "set": [fin("front", x, b, 1.125 * INCH, toe=beside(2.5 * INCH))]},
     both("front", base_line(x, y, b, nose, atan2(3.625, 60.75))),
     confidence="CP", source="set-out numbers: common practice, no source; half-width ours; plane trigonometry")
case("string beyond the nose: worked identity",
     "5 in out, aim 84 in ahead on the centreline, base 4 in: 4 sin(atan(5/84)) = 4 * 5/sqrt(5^2 + 84^2) = 0.238 in",
     board(nose, parallel(6 * INCH)),
     {"arrangement": "twin", "set": [fin("front", 12 * INCH, 4 * INCH, 1 * INCH, toe=beyond(24 * INCH))]},
     both("front", {**base_line(12 * INCH, 5 * INCH, 4 * INCH, nose, atan2(5, 84)),
                    "toeOverBaseM": 4 * INCH * 5 / hypot(5, 84), "aimBeyondNoseM": 24 * INCH}),
     source="worked identity of the handbook: 5 in, 4 in, 84 in give 0.238 in (trigonometry)")
case("over the base: a quarter inch over four and a half",
     "the base is the hypotenuse: asin(0.25/4.5)",
     board(nose, parallel(half)),
     {"arrangement": "tri", "set": [fin("front", 11 * INCH, b, 1.25 * INCH, toe=over(0.25 * INCH)),
                                    fin("centre", 3.5 * INCH, b)]},
     {**both("front", base_line(11 * INCH, 6 * INCH, b, nose, asin(0.25 / 4.5))), "centre": centre_mark(3.5 * INCH, b)},
     confidence="CP", source="set-out numbers: common practice, no source; plane trigonometry")
case("by angle: 3 degrees", "rotation of the base by the stated angle",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, toe=turned(radians(3)))]},
     both("front", base_line(0.28, 0.17, 0.11, 1.8, radians(3))))
case("pointing out: the aim lies farther out than the mark",
     "atan((0.17 - 0.25)/1.52), negative; the line never meets the centreline ahead",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, toe=beside(0.25))]},
     both("front", base_line(0.28, 0.17, 0.11, 1.8, atan2(0.17 - 0.25, 1.52))))
case("aim at the nose tip itself", "both aims are nought: atan(0.17/1.52)",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, toe=beside(0))]},
     both("front", {**base_line(0.28, 0.17, 0.11, 1.8, atan(0.17 / 1.52)), "aimBesideNoseM": 0, "aimBeyondNoseM": 0}))
case("aim short of the nose, on the centreline", "the line meets the centreline 0.3 m before the tip: atan(0.17/1.22)",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, toe=beyond(-0.3))]},
     both("front", {**base_line(0.28, 0.17, 0.11, 1.8, atan(0.17 / 1.22)), "aimBeyondNoseM": -0.3}))
case("parallel: no toe stated", "a base along the centreline",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03)]},
     both("front", base_line(0.28, 0.17, 0.11, 1.8, 0)))

# --- arrangements --------------------------------------------------------------------------------------------------------
case("single", "a centre fin lies along the centreline",
     board(2.0, parallel(0.2)), {"arrangement": "single", "set": [fin("centre", 0.2, 0.16)]},
     {"centre": centre_mark(0.2, 0.16)})
case("twin of keels", "asin(3/16 over 6.5)",
     board(1.7, parallel(0.22)),
     {"arrangement": "twin", "set": [fin("front", 6 * INCH, 6.5 * INCH, 1.25 * INCH, toe=over(3 / 16 * INCH))]},
     both("front", base_line(6 * INCH, 0.22 - 1.25 * INCH, 6.5 * INCH, 1.7, asin(3 / 16 / 6.5))))

front_toe = atan2(0.17 - 0.06, 1.8 - 0.29)
rear_toe = atan2(0.13 - 0.06, 1.8 - 0.15)
case("quad: rears meet the fronts' string beside the nose",
     "both strings end 60 mm beside the nose: atan((0.17 - 0.06)/1.51) and atan((0.13 - 0.06)/1.65)",
     board(1.8, parallel(0.2)),
     {"arrangement": "quad", "set": [fin("front", 0.29, 0.11, 0.03, toe=beside(0.06)),
                                     fin("rear", 0.15, 0.1, 0.07, toe={"kind": "meets", "fin": "front"})]},
     {**both("front", base_line(0.29, 0.17, 0.11, 1.8, front_toe)),
      **both("rear", {**base_line(0.15, 0.13, 0.1, 1.8, rear_toe), "aimBesideNoseM": 0.06})})
case("quad: rears meet the fronts' string beyond the nose",
     "both lines meet the centreline 0.5 m beyond the tip: atan(0.17/2.01) and atan(0.13/2.15)",
     board(1.8, parallel(0.2)),
     {"arrangement": "quad", "set": [fin("front", 0.29, 0.11, 0.03, toe=beyond(0.5)),
                                     fin("rear", 0.15, 0.1, 0.07, toe={"kind": "meets", "fin": "front"})]},
     {**both("front", base_line(0.29, 0.17, 0.11, 1.8, atan(0.17 / 2.01))),
      **both("rear", {**base_line(0.15, 0.13, 0.1, 1.8, atan(0.13 / 2.15)), "aimBeyondNoseM": 0.5})})
angle_front = asin(6 / 110)
nose_cross = 0.17 - 1.51 * tan(angle_front)
case("quad: rears meet fronts that are set over the base",
     "the fronts' line crosses the square at the nose at 0.17 - 1.51 tan(asin(6/110)), and the rears' string ends there",
     board(1.8, parallel(0.2)),
     {"arrangement": "quad", "set": [fin("front", 0.29, 0.11, 0.03, toe=over(0.006)),
                                     fin("rear", 0.15, 0.1, 0.07, toe={"kind": "meets", "fin": "front"})]},
     {**both("front", base_line(0.29, 0.17, 0.11, 1.8, angle_front)),
      **both("rear", base_line(0.15, 0.13, 0.1, 1.8, atan((0.13 - nose_cross) / 1.65)))})
case("twin with trailer", "asin(4/120); the trailer along the centreline",
     board(1.75, parallel(0.21)),
     {"arrangement": "twin-trailer", "set": [fin("front", 0.25, 0.12, 0.032, toe=over(0.004)), fin("centre", 0.08, 0.07)]},
     {**both("front", base_line(0.25, 0.178, 0.12, 1.75, asin(4 / 120))), "centre": centre_mark(0.08, 0.07)})
case("five-box", "three kinds of fin, each by its own triangle",
     board(1.8, parallel(0.2)),
     {"arrangement": "five-box", "set": [fin("front", 0.28, 0.11, 0.03, toe=beside(0.07)),
                                         fin("rear", 0.14, 0.1, 0.05, toe=turned(radians(2))), fin("centre", 0.09, 0.1)]},
     {**both("front", base_line(0.28, 0.17, 0.11, 1.8, atan2(0.1, 1.52))),
      **both("rear", base_line(0.14, 0.15, 0.1, 1.8, radians(2))), "centre": centre_mark(0.09, 0.1)})
case("one long centre box with two side fins", "asin(1/4 over 4 in) for the sides; box reach by addition",
     board(2.79, parallel(0.25)),
     {"arrangement": "single-sides",
      "set": [fin("front", 13 * INCH, 4 * INCH, 1.375 * INCH, toe=over(0.25 * INCH)),
              fin("centre", 0.15, 0.19, box={"lengthM": 0.265, "widthM": 0.025, "depthM": 0.025, "behindTrailingM": 0.03})]},
     {**both("front", base_line(13 * INCH, 0.25 - 1.375 * INCH, 4 * INCH, 2.79, asin(1 / 16))),
      "centre": {**centre_mark(0.15, 0.19),
                 "box": {"rearFromTailM": 0.12, "frontFromTailM": 0.385, "slide": {"backM": 0.03, "forwardM": 0.045}}}})
case("an extra pair and an extra middle fin", "any other name is an extra fin; atan(0.05/1.4) for the pair",
     board(1.8, parallel(0.2)),
     {"arrangement": "tri",
      "set": [fin("front", 0.28, 0.11, 0.03), fin("centre", 0.09, 0.11),
              fin("tabs", 0.4, 0.05, 0.1, toe=beside(0.05)), fin("keel", 0.5, 0.05)]},
     {**both("front", base_line(0.28, 0.17, 0.11, 1.8, 0)), "centre": centre_mark(0.09, 0.11),
      **both("tabs", base_line(0.4, 0.1, 0.05, 1.8, atan(0.05 / 1.4))), "keel": centre_mark(0.5, 0.05)})

# --- along the board -----------------------------------------------------------------------------------------------------
case("swallow, from the crotch, straight", "the crotch lies 90 mm up, so the mark is 0.25 + 0.09 from the tips",
     board(1.8, parallel(0.2), notch={"halfWidthM": 0.06, "depthM": 0.09}),
     {"arrangement": "twin", "fromTailBy": "straight", "fromTailOf": "crotch", "set": [fin("front", 0.25, 0.11, 0.03)]},
     both("front", {"trailing": {"fromTailM": 0.34, "fromTailTapeM": 0.34, "fromCrotchTapeM": 0.25}}))


def arc(radius, length):
    """Tape from straight and back on a bottom that is a circular arc, level at half length."""
    end = asin(length / 2 / radius)
    return (lambda at: radius * (asin((at - length / 2) / radius) + end),
            lambda tape: length / 2 + radius * sin(tape / radius - end))


tape, straight = arc(4.0, 1.8)
up = straight(0.28)
front_up = up + 0.11 * cos(atan2(0.17 - 0.07, 1.8 - up))
case("by tape on a bottom that is an arc of 4 m", "arc length R(asin((x - L/2)/R) + asin(L/2R)), and its inverse",
     board(1.8, parallel(0.2), rockerRadiusM=4.0),
     {"arrangement": "twin", "fromTailBy": "tape", "set": [fin("front", 0.28, 0.11, 0.03, toe=beside(0.07))]},
     both("front", {**base_line(up, 0.17, 0.11, 1.8, atan2(0.1, 1.8 - up)),
                    "trailing": {"fromTailM": up, "fromTailTapeM": 0.28, "fromCentrelineM": 0.17},
                    "leading": {"fromTailM": front_up, "fromTailTapeM": tape(front_up)}}))
crotch_tape = tape(0.09)
up = straight(crotch_tape + 0.25)
case("swallow, from the crotch, by tape on an arc", "tape to the crotch 90 mm up, 0.25 m more, and back to straight",
     board(1.8, parallel(0.2), rockerRadiusM=4.0, notch={"halfWidthM": 0.06, "depthM": 0.09}),
     {"arrangement": "twin", "fromTailBy": "tape", "fromTailOf": "crotch", "set": [fin("front", 0.25, 0.11, 0.03)]},
     both("front", {"trailing": {"fromTailM": up, "fromTailTapeM": crotch_tape + 0.25, "fromCrotchTapeM": 0.25}}),
     line={"crotchFromTailM": 0.09})

# --- from the rail -------------------------------------------------------------------------------------------------------
ellipse = lambda at: 0.25 * sqrt(1 - (2 * at / 1.8 - 1) ** 2)
y = ellipse(0.28) - 0.03
case("elliptic outline, square to the centreline", "half-width of the ellipse less the distance from the rail",
     board(1.8, {"kind": "ellipse", "halfM": 0.25}),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, toe=beside(0.07))]},
     both("front", base_line(0.28, y, 0.11, 1.8, atan2(y - 0.07, 1.52))))
slope = 0.08
y = 0.15 + slope * 0.28 - 0.03 * sqrt(1 + slope**2)
case("tapered outline, square to the rail", "distance from a straight rail: 0.03 sqrt(1 + 0.08^2) measured square to the centreline",
     board(1.8, {"kind": "taper", "tailM": 0.15, "slope": slope}),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, fromRailBy="square-to-rail")]},
     both("front", {"trailing": {"fromTailM": 0.28, "fromCentrelineM": y, "toRailM": 0.03,
                                 "fromRailM": 0.03 * sqrt(1 + slope**2)}}))
radius, cx, cy = 2.0, 0.95, -1.76
y = cy + sqrt((radius - 0.03) ** 2 - (0.28 - cx) ** 2)
case("outline that is a circular arc, square to the rail", "the mark lies on the circle about the same middle, 30 mm smaller",
     board(1.8, {"kind": "arc", "radiusM": radius, "middleXM": cx, "middleYM": cy}),
     {"arrangement": "twin", "set": [fin("front", 0.28, 0.11, 0.03, fromRailBy="square-to-rail")]},
     both("front", {"trailing": {"fromTailM": 0.28, "fromCentrelineM": y, "toRailM": 0.03}}))

# --- boards out of true --------------------------------------------------------------------------------------------------
six = board(1.8, parallel(0.203), parallel(0.197), shiftM=0.003)
one = [fin("front", 0.28, 0.11, 0.03, toe=beside(0.06))]
toe_of = lambda across: atan2(across - 0.06, 1.52)
case("6 mm out of true, average", "(0.173 + 0.167)/2 on both sides; the rails then read 33 and 27 mm",
     six, {"arrangement": "twin", "sides": "average", "set": one},
     {"front-left": {**base_line(0.28, 0.17, 0.11, 1.8, toe_of(0.17)),
                     "trailing": {"fromCentrelineM": 0.17, "fromStringerM": 0.17, "fromRailM": 0.033}},
      "front-right": {**base_line(0.28, 0.17, 0.11, 1.8, toe_of(0.17)),
                      "trailing": {"fromCentrelineM": 0.17, "fromStringerM": 0.17, "fromRailM": 0.027}}},
     asymmetryM=0.006)
case("6 mm out of true, each by its own rail", "0.203 - 0.03 and 0.197 - 0.03, and a toe for each",
     six, {"arrangement": "twin", "sides": "rail", "set": one},
     {"front-left": base_line(0.28, 0.173, 0.11, 1.8, toe_of(0.173)),
      "front-right": base_line(0.28, 0.167, 0.11, 1.8, toe_of(0.167))},
     asymmetryM=0.006)
case("6 mm out of true, about the best-fit centreline", "the line lies 3 mm left, both rails read 30 mm from it",
     six, {"arrangement": "twin", "sides": "centreline", "set": one},
     {"front-left": {**base_line(0.28, 0.17, 0.11, 1.8, toe_of(0.17)),
                     "trailing": {"fromCentrelineM": 0.17, "fromStringerM": 0.173, "fromRailM": 0.03}},
      "front-right": {**base_line(0.28, 0.17, 0.11, 1.8, toe_of(0.17)),
                      "trailing": {"fromCentrelineM": 0.17, "fromStringerM": 0.167, "fromRailM": 0.03}}},
     asymmetryM=0)

skew, shift = radians(0.4), 0.002
at_tail = shift - 0.9 * tan(skew)
skewed = board(1.8, {"kind": "skewed", "halfM": 0.2, "shiftM": shift, "skewRad": skew, "side": "left"},
               {"kind": "skewed", "halfM": 0.2, "shiftM": shift, "skewRad": skew, "side": "right"},
               shiftM=shift, skewRad=skew)
nose_along = 1.8 * cos(skew) - at_tail * sin(skew)


def rotated(along, out, sign):
    return {"xM": along * cos(skew) - sign * out * sin(skew), "yM": at_tail + along * sin(skew) + sign * out * cos(skew)}


skew_toe = atan2(0.17 - 0.06, nose_along - 0.28)
skew_mark = base_line(0.28, 0.17, 0.11, nose_along, skew_toe)
case("skewed stringer, about the best-fit centreline",
     "rails parallel to a line turned 0.4 degrees and 2 mm left at half length: 0.2 - 0.03 from that line, turned into the board's frame",
     skewed, {"arrangement": "twin", "sides": "centreline", "set": one},
     {f"front-{side}": {**skew_mark,
                        "trailing": {"fromTailM": 0.28, "fromCentrelineM": 0.17, "fromRailM": 0.03, "at": rotated(0.28, 0.17, sign)}}
      for side, sign in (("left", 1), ("right", -1))},
     asymmetryM=0, line={"atTailM": at_tail, "skewRad": skew, "noseFromTailM": nose_along})
line_at = shift + (0.28 - 0.9) * tan(skew)
mean = 0.2 / cos(skew) - 0.03
case("skewed stringer, average about the stringer",
     "rails at 0.2/cos(0.4 degrees) plus and minus the line's offset at the mark; the mean does not see the offset",
     skewed, {"arrangement": "twin", "sides": "average", "set": one},
     both("front", base_line(0.28, mean, 0.11, 1.8, toe_of(mean))), asymmetryM=abs(2 * line_at))

# --- lean, foam, worth ---------------------------------------------------------------------------------------------------
case("twist in the true cant", "2 degrees between tail and nose, at 0.36 m of 1.8: 2(0.5 - 0.2) = 0.6 degrees, left side up",
     board(1.8, parallel(0.2), twistRad=radians(2)),
     {"arrangement": "twin", "set": [fin("front", 0.36, 0.11, 0.03, cantRad=radians(6))]},
     {"front-left": {"cantRad": radians(6), "twistRad": radians(0.6), "trueCantRad": radians(6.6)},
      "front-right": {"cantRad": radians(6), "twistRad": radians(0.6), "trueCantRad": radians(5.4)}})
case("vee under the gauge", "the bottom rises 5 mm in 100 outwards: atan(0.05) on both sides",
     board(1.8, parallel(0.2), veeSlope=0.05),
     {"arrangement": "twin", "set": [fin("front", 0.3, 0.11, 0.03, cantRad=radians(5))]},
     both("front", {"bottomTiltRad": atan(0.05), "trueCantRad": radians(5) + atan(0.05)}))
case("foam over a leaning box", "floor's outer edge: 60 - (20 cos 6 + 10 sin 6) mm on a slab",
     board(1.8, parallel(0.2), thicknessM=0.06),
     {"arrangement": "twin", "set": [fin("front", 0.3, 0.11, 0.05, cantRad=radians(6),
                                         box={"lengthM": 0.13, "widthM": 0.02, "depthM": 0.02})]},
     both("front", {"foamUnderM": 0.06 - 0.02 * cos(radians(6)) - 0.01 * sin(radians(6))}))
case("foam under a bare base", "the slab's thickness", board(1.8, parallel(0.2), thicknessM=0.055),
     {"arrangement": "twin", "set": [fin("front", 0.3, 0.11, 0.05)]}, both("front", {"foamUnderM": 0.055}))
case("what a millimetre is worth", "1 mm at one end of a 110 mm base: 1/110 rad = 0.52 degrees; at the nose end of 1.5 m of string 1/1500",
     board(1.8, parallel(0.2)),
     {"arrangement": "twin", "set": [fin("front", 0.3, 0.11, 0.03, toe=turned(0))]},
     both("front", {"worth": {"baseEndRadPerM": 1 / 0.11, "trailingAcrossRadPerM": 1 / 1.5, "noseEndRadPerM": -1 / 1.5,
                              "trailingAlongRadPerM": 0}}))

document = {
    "source": "plane trigonometry; set-out numbers of the trade where a case says so (common practice, no source)",
    "page": "derive.py, one case after another",
    "confidence": "D",
    "tolerance": 1e-9,
    "whyTolerance": "metres and radians; both sides are closed forms in doubles, the searches (crotch, square to the rail, skewed line) stop below a thousandth of a micrometre",
    "cases": CASES,
}
with open("setting-out.json", "w", encoding="utf-8") as file:
    json.dump(document, file, indent=2, ensure_ascii=False)
    file.write("\n")
print(len(CASES), "cases")
