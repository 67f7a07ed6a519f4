"""Works out the expected figures of verify.json apart from the engine: pockets, bits, resin, patches, and the readings before the router.

Run by hand in this folder when a case is added: python3 derive_verify.py. The tests read only the JSON it writes. `how` says what
gives each case's numbers. Lengths in metres, angles in radians, volumes in cubic metres, times in seconds. Lists of the plan stand
here by the ids of their elements. Sizes that are taken from practice (room for resin 1.5 mm, 1.0 to 2.5 mm; proud 0.5 mm over foam
and laminate, 0.8 mm over the fill coat; patch 25 mm beyond; a day's cure) are common practice, no source; what follows from them
is plane geometry.
"""

import json
import re
from math import asin, atan, cos, hypot, pi, radians, sin, sqrt

CASES = []
GAP, GAP_LOW, GAP_HIGH = 0.0015, 0.001, 0.0025
INCH = 0.0254
LENGTH, HALF, THICK = 1.8, 0.2, 0.06
BOARD = {"lengthM": LENGTH, "left": {"kind": "parallel", "halfM": HALF}, "right": {"kind": "parallel", "halfM": HALF}}
BOX = {"lengthM": 0.118, "widthM": 0.021, "depthM": 0.018, "behindTrailingM": 0.004}
UP, RAIL, BASE = 0.28, 0.03, 0.11
OUT, REACH = HALF - RAIL, LENGTH - UP


def case(name, how, fins, expected, board=BOARD, confidence="D"):
    CASES.append({"name": name, "how": how, "confidence": confidence, "board": board, "fins": fins, "expected": expected})


def front(**more):
    return {"fin": "front", "fromTailM": UP, "fromRailM": RAIL, "baseM": BASE, **more}


def twin(boxes, fin, **more):
    return {"arrangement": "twin", "boxes": boxes, "set": [fin], **more}


def fill(box, gap):
    l, w, d = box["lengthM"], box["widthM"], box["depthM"]
    ends = 2 * gap * (w + 2 * gap) * (d + gap)
    sides = 2 * gap * l * (d + gap)
    return ends + sides + l * w * gap


def setting(box, proud, patch):
    return {
        "cutOut": {"lengthM": box["lengthM"] + 0.003, "widthM": box["widthM"] + 0.003, "depthM": box["depthM"] + GAP - proud},
        "proudM": proud,
        "foamOverCutM": THICK - box["depthM"] - GAP + proud,
        "fillVolumeM3": fill(box, GAP),
        "fillVolumeLowM3": fill(box, GAP_LOW),
        "fillVolumeHighM3": fill(box, GAP_HIGH),
        "patch": patch,
        "cureBeforeLoadS": 86400,
    }


# --- how a box is let in -------------------------------------------------------------------------------------------------
WIDE = sqrt(2) / (sqrt(2) - 1)  # a round corner clears the square one while r <= gap * this
for timing, proud, surface, patch in [
    ("before-glass", 0.0005, "foam", {"lengthM": 0.168, "widthM": 0.071}),
    ("after-laminate", 0.0005, "laminate", {"lengthM": 0.168, "widthM": 0.071}),
    ("after-fill", 0.0008, "fill", None),
]:
    case(f"a box of 118 x 21 x 18 mm, {timing}",
         "pocket 3 mm longer and wider, 1.5 mm deeper less what stands proud; resin: two ends, two sides and the bed; bit: 2 x 1.5 mm x sqrt(2)/(sqrt(2) - 1)",
         twin(timing, front(box=BOX)),
         {"surface": surface, "boxes": {f"front-{side}": {
             **setting(BOX, proud, patch), "mostBitM": 2 * GAP * WIDE,
             "bits": {"mm": {"diameterM": 0.010}, "inch": {"diameterM": 3 / 8 * INCH}}} for side in ("left", "right")},
          "glassedOn": {}})
NARROW = {"lengthM": 0.1, "widthM": 0.004, "depthM": 0.02}
case("a narrow tab box: the pocket's width bounds the bit", "7 mm of pocket take a 6 mm or a quarter-inch bit",
     twin("after-fill", front(box=NARROW)),
     {"boxes": {"front-left": {"mostBitM": 0.007, "bits": {"mm": {"diameterM": 0.006}, "inch": {"diameterM": INCH / 4}}}}})
case("a slot of 2 mm: no common bit goes in", "5 mm of pocket",
     twin("after-fill", front(box={**NARROW, "widthM": 0.002})),
     {"boxes": {"front-left": {"mostBitM": 0.005, "bits": {"mm": {"diameterM": None}, "inch": {"diameterM": None}}}}})
case("glassed on", "fillets: square less quarter circle, 8 mm, along both sides of 110 mm; cloth 40 mm beyond the base, up and out",
     twin("glassed-on", front()),
     {"surface": "laminate", "boxes": {},
      "glassedOn": {f"front-{side}": {"filletRadiusM": 0.008, "filletVolumeM3": 2 * BASE * (0.008**2 - pi * 0.008**2 / 4),
                                      "tackLengthM": 0.02, "patch": {"lengthM": 0.19, "widthM": 0.08},
                                      "cureBeforeLoadS": 86400} for side in ("left", "right")}})


# --- readings ------------------------------------------------------------------------------------------------------------
def read(check, state, **more):
    return {"checks": {check: {"state": state, **more}}}


tolerance = 0.001 * REACH / BASE
case("string 8 mm too far out: inside what 1 mm at one end of the base comes to",
     "similar triangles: 1 mm over 110 mm is 13.8 mm over 1.52 m",
     twin("after-fill", front(box=BOX), verify={"strings": [{"fin": "front", "side": "left", "besideNoseM": OUT + 0.008}]}),
     read("string-front-left", "good", correction=None, lengths={"beside-nose": {
         "targetM": OUT, "toleranceM": tolerance, "readM": OUT + 0.008, "errorM": 0.008}}))
case("string 20 mm too far out", "the base turned out by atan(20/1520); its front comes back by 110 mm times the sine",
     twin("after-fill", front(box=BOX), verify={"strings": [{"fin": "front", "side": "right", "besideNoseM": OUT + 0.02}]}),
     {"verdict": "correct", "next": "string-front-right",
      **read("string-front-right", "out", lengths={"beside-nose": {"errorM": 0.02}},
             correction={"end": "leading", "leadingAcrossM": -BASE * sin(atan(0.02 / REACH)), "trailingAcrossM": 0,
                         "alongM": 0, "cantRad": 0, "deeperM": 0})})
toe = asin(6 / 110)
case("string of a toed fin, 15 mm too far in", "tolerance 1 mm x 1.52/(0.11 cos tau); front moved out by the difference of the sines",
     twin("after-fill", front(box=BOX, toe={"kind": "overBase", "overM": 0.006}),
          verify={"strings": [{"fin": "front", "side": "left", "besideNoseM": OUT - REACH * 6 / sqrt(110**2 - 36) - 0.015}]}),
     read("string-front-left", "out",
          lengths={"beside-nose": {"targetM": OUT - REACH * 6 / sqrt(110**2 - 36), "errorM": -0.015,
                                   "toleranceM": 0.001 * REACH / (BASE * cos(toe))}},
          correction={"end": "leading",
                      "leadingAcrossM": BASE * (sin(atan(6 / sqrt(110**2 - 36) + 0.015 / REACH)) - 6 / 110)}))

nose_diagonal, tail_diagonal = hypot(REACH, OUT), hypot(UP, OUT)
case("equal diagonals", "hypotenuses of 1.52 and 0.17 m, and of 0.28 and 0.17 m",
     twin("after-fill", front(box=BOX), verify={"diagonals": [
         {"fin": "front", "from": "nose", "to": "trailing", "leftM": nose_diagonal + 0.003, "rightM": nose_diagonal + 0.0025}]}),
     {"checks": {
         "diagonal-front-nose-trailing": {"state": "good", "required": True, "lengths": {
             "left": {"targetM": nose_diagonal, "toleranceM": None, "errorM": 0.003}, "right": {"targetM": nose_diagonal},
             "differ": {"targetM": 0, "toleranceM": 0.001, "readM": 0.0005, "errorM": 0.0005}}},
         "diagonal-front-tail-trailing": {"state": "open", "lengths": {"left": {"targetM": tail_diagonal, "readM": None}}},
         "diagonal-front-nose-leading": {"required": False, "lengths": {
             "left": {"targetM": hypot(REACH - BASE, OUT)}}}}})
case("diagonals 4 mm apart", "left less right",
     twin("after-fill", front(box=BOX), verify={"diagonals": [
         {"fin": "front", "from": "tail", "to": "leading", "leftM": 0.432, "rightM": 0.428}]}),
     {"verdict": "correct", **read("diagonal-front-tail-leading", "out", correction=None, lengths={"differ": {"errorM": 0.004}})})
six = {"lengthM": LENGTH, "left": {"kind": "parallel", "halfM": 0.203}, "right": {"kind": "parallel", "halfM": 0.197}}
apart = hypot(UP, 0.173) - hypot(UP, 0.167)
case("diagonals that differ on purpose, each side by its own rail", "hypotenuses of 0.28 m with 0.173 and 0.167 m",
     twin("after-fill", front(box=BOX), sides="rail", verify={"diagonals": [
         {"fin": "front", "from": "tail", "to": "trailing", "leftM": hypot(UP, 0.173), "rightM": hypot(UP, 0.167)}]}),
     read("diagonal-front-tail-trailing", "good", lengths={"differ": {"targetM": apart, "readM": apart, "errorM": 0}}),
     board=six)
case("diagonals made equal where they should differ", "out by the whole difference on purpose",
     twin("after-fill", front(box=BOX), sides="rail", verify={"diagonals": [
         {"fin": "front", "from": "tail", "to": "trailing", "leftM": 0.33, "rightM": 0.33}]}),
     read("diagonal-front-tail-trailing", "out", lengths={"differ": {"targetM": apart, "errorM": -apart}}), board=six)


def entry(side, trailing=(0, 0), leading=(0, 0), **more):
    return {"fin": "front", "side": side,
            "trailing": {"fromTailM": UP + trailing[0], "fromCentrelineM": OUT + trailing[1]},
            "leading": {"fromTailM": UP + BASE + leading[0], "fromCentrelineM": OUT + leading[1]}, **more}


case("both marks: one 0.6 and 0.8 mm off is 1 mm off, and good", "3-4-5 triangle",
     twin("after-fill", front(box=BOX), asSet=[entry("left", trailing=(0.0006, 0.0008))]),
     read("marks-front-left", "good", lengths={
         "trailing-from-tail": {"targetM": UP, "readM": UP + 0.0006, "errorM": 0.0006, "toleranceM": None},
         "trailing-from-centreline": {"targetM": OUT, "errorM": 0.0008},
         "leading-from-tail": {"targetM": UP + BASE}, "trailing": {"readM": 0.001, "errorM": 0.001, "toleranceM": 0.001},
         "leading": {"errorM": 0}}))
case("both marks: the leading one 3 mm out", "moved back by as much; the trailing one stays",
     twin("after-fill", front(box=BOX), asSet=[entry("left", leading=(0, 0.003))]),
     read("marks-front-left", "out", correction={"end": "leading", "leadingAcrossM": -0.003, "trailingAcrossM": 0}))
case("each side good, the two apart", "0.8 mm out on the left and 0.8 mm in on the right are 1.6 mm",
     twin("after-fill", front(box=BOX), asSet=[entry("left", trailing=(0, 0.0008)), entry("right", trailing=(0, -0.0008))]),
     {"checks": {"marks-front-left": {"state": "good"}, "marks-front-right": {"state": "good"},
                 "sides-front": {"state": "out", "lengths": {"trailing": {"errorM": 0.0016}, "leading": {"errorM": 0}}}}})
case("marks measured from the crotch", "the crotch lies 90 mm up",
     {**twin("after-fill", front(box=BOX)), "fromTailBy": "straight", "fromTailOf": "crotch"},
     read("marks-front-left", "open", lengths={"trailing-from-tail": {"targetM": UP}, "leading-from-tail": {"targetM": UP + BASE}}),
     board={**BOARD, "notch": {"halfWidthM": 0.06, "depthM": 0.09}})

case("cant block 1.5 degrees too steep", "7.5 read for 6, held to 1 degree (common practice, no source)",
     twin("after-fill", front(box=BOX, cantRad=radians(6)), verify={"cantBlocks": [{"fin": "front", "cantRad": radians(7.5)}]}),
     read("cant-front", "out", angles={"block": {"targetRad": radians(6), "toleranceRad": radians(1), "errorRad": radians(1.5)}},
          correction={"cantRad": -radians(1.5)}), confidence="CP")
case("depth stop 1 mm too deep over the fill coat", "18 + 1.5 - 0.8 mm",
     twin("after-fill", front(box=BOX), verify={"depthStops": [{"fin": "front", "depthM": 0.0197}]}),
     read("depth-stop-front", "out", lengths={"depth": {"targetM": 0.0187, "toleranceM": 0.0005, "errorM": 0.001}},
          correction={"deeperM": -0.001}), confidence="CP")
case("a later reading of the stop replaces the first", "the last line counts",
     twin("after-fill", front(box=BOX), verify={"depthStops": [{"fin": "front", "depthM": 0.0197}, {"fin": "front", "depthM": 0.0188}]}),
     read("depth-stop-front", "good", lengths={"depth": {"readM": 0.0188, "errorM": 0.0001}}))
case("the same stop set from the foam", "18 + 1.5 - 0.5 mm: the surface that is there decides",
     twin("after-fill", front(box=BOX), verify={"on": "foam", "depthStops": [{"fin": "front", "depthM": 0.019}]}),
     {"surface": "foam", **read("depth-stop-front", "good", lengths={"depth": {"targetM": 0.019}})}, confidence="CP")
case("a box that stands 0.5 mm below the surface", "1.3 mm lower than 0.8 mm above it: the stop comes up by as much",
     twin("after-fill", front(box=BOX), verify={"proud": [{"fin": "front", "heightM": -0.0005}]}),
     read("proud-front", "out", lengths={"proud": {"targetM": 0.0008, "errorM": -0.0013}}, correction={"deeperM": -0.0013}),
     confidence="CP")

# --- leash plug ----------------------------------------------------------------------------------------------------------
plug = {"fromTailM": 0.08, "fromCentrelineM": 0.02, "side": "left", "diameterM": 0.028, "depthM": 0.02}
case("leash plug clear of the boxes", "cloth 25 mm beyond 28 mm all round; the slab less 6 mm of foam",
     twin("after-fill", front(box=BOX), fromTailBy="straight", leashPlug=plug),
     {"leashPlug": {"patchDiameterM": 0.078, "cureBeforeLoadS": 86400, "pullTestN": 40 * 9.80665, "pullTestMassKg": 40, "mostDepthM": 0.054,
                    "boxBeneath": None, "foamToBoxM": None}}, confidence="CP")
case("leash plug over a rear box", "60 - 18 - 20 mm between the floors; 60 - 18 - 6 mm at most",
     {"arrangement": "quad", "fromTailBy": "straight", "leashPlug": {**plug, "fromTailM": 0.1, "fromCentrelineM": 0.03},
      "set": [front(box=BOX), {"fin": "rear", "fromTailM": 0.07, "fromRailM": 0.17, "baseM": 0.1, "box": BOX}]},
     {"leashPlug": {"boxBeneath": "rear-left", "foamToBoxM": 0.022, "mostDepthM": 0.036}}, confidence="CP")

document = {
    "source": "plane geometry and arithmetic; sizes taken from practice are common practice, no source",
    "page": "derive_verify.py, one case after another",
    "confidence": "D",
    "tolerance": 1e-9,
    "whyTolerance": "closed forms in doubles on both sides",
    "cases": CASES,
}
# The formatter of this project writes 1e-6 where Python writes 1e-06.
text = re.sub(r"e-0(\d)", r"e-\1", json.dumps(document, indent=2, ensure_ascii=False))
with open("verify.json", "w", encoding="utf-8") as file:
    file.write(text + "\n")
print(len(CASES), "cases")
