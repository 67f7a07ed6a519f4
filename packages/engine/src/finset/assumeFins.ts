import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import { CANT_GAUGE } from "../constants/finLimits";
import { DEPTH_TOLERANCE_M } from "../constants/finSetting";
import { LEASH_PLUG } from "../constants/fittings";
import { say } from "../foundation/phrase";
import { angle, length } from "../foundation/quantity";
import type { Assumption } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { FinInput, FinsInput, LeashPlugInput } from "./FinsInput";
import { assumeSetting } from "./verify/assumeSetting";

/** Says each thing that is taken where the fins' part of a board file leaves it out. */
export function assumeFins(fins: FinsInput): readonly Assumption[] {
  return [
    ...assumeOfSet(fins),
    ...fins.set.flatMap((fin, i) => assumeOfFin(fin, `fins.set[${i}]`, fins.boxes)),
    ...assumeOfGauge(fins),
    ...(fins.leashPlug === undefined ? [] : assumeOfPlug(fins.leashPlug)),
    ...assumeSetting(fins, fins.boxes ?? "after-fill"),
  ];
}

function assumeOfSet(fins: FinsInput): readonly Assumption[] {
  const taken: ReadonlyArray<readonly [unknown, Assumption]> = [
    [
      fins.sides,
      assume(
        "fins.sides",
        say`average`,
        "both sides are measured from their own rail and both fins stand at the mean, so that a board out of true does not turn one fin against the other",
        "common-practice",
      ),
    ],
    [
      fins.boxes,
      assume("fins.boxes", say`after-fill`, "the boxes are set after the fill coat", "common-practice"),
    ],
    [
      fins.fromTailBy,
      assume(
        "fins.fromTailBy",
        say`tape`,
        "distances from the tail are read with a tape along the bottom",
        "convention",
      ),
    ],
    [
      fins.fromTailOf,
      assume("fins.fromTailOf", say`tips`, "and from a straightedge across the tail tips", "convention"),
    ],
    [
      fins.toleranceM,
      assume(
        "fins.tolerance",
        say`${length(SET_OUT_TOLERANCE.markM)}`,
        "a careful set-out is held to about a millimetre",
        SET_OUT_TOLERANCE.source,
      ),
    ],
  ];
  return taken.flatMap(([given, assumption]) => (given === undefined ? [assumption] : []));
}

function assumeOfFin(fin: FinInput, path: string, boxes: FinsInput["boxes"]): readonly Assumption[] {
  const isPair = fin.fromRailM !== undefined;
  const taken: ReadonlyArray<readonly [boolean, Assumption]> = [
    [
      isPair && fin.fromRailBy === undefined,
      assume(
        `${path}.fromRailBy`,
        say`square-to-centreline`,
        "the distance from the rail is read square to the centreline",
        "convention",
      ),
    ],
    [
      isPair && fin.toe === undefined,
      assume(`${path}.toe`, say`0°`, "no toe is given, so the fin stands along the centreline", "convention"),
    ],
    [
      isPair && fin.cantRad === undefined,
      assume(
        `${path}.cant`,
        say`0°`,
        "no cant is given, so the fin stands square to the bottom",
        "convention",
      ),
    ],
    [
      boxes !== "glassed-on" && fin.box !== undefined && fin.box.behindTrailingM === undefined,
      assume(
        `${path}.box.behindTrailing`,
        say`centred`,
        "how far the box reaches behind the mark is not given, so the base stands in its middle",
        "convention",
      ),
    ],
  ];
  return taken.flatMap(([isTaken, assumption]) => (isTaken ? [assumption] : []));
}

/** The gauge that cant is read by, and what lean and depth are held to. */
function assumeOfGauge(fins: FinsInput): readonly Assumption[] {
  const hasPair = fins.set.some(({ fromRailM }) => fromRailM !== undefined);
  const tilt = [
    assume(
      "finset.marks[].bottomTiltRad",
      say`the section curve`,
      "the bottom's slope under the cant gauge is that of the section's curve, which cannot draw a tucked edge: near the rail it slopes more than a bottom that is flat to its edge, and the true cant with it",
      "convention",
    ),
    assume(
      "finset.marks[].trueCantRad",
      say`a gauge ${length(2 * CANT_GAUGE.halfWidthM)} wide`,
      "how wide the cant gauge sits on the bottom is not in the board file",
      CANT_GAUGE.source,
    ),
  ];
  const hasBox = fins.boxes !== "glassed-on" && fins.set.some(({ box }) => box !== undefined);
  return [
    ...(hasPair ? tilt : []),
    assume(
      "finset.verify.checks[].angles",
      say`${angle(SET_OUT_TOLERANCE.cantRad)}`,
      "a cant block, and a fin as set, are held to about a degree",
      SET_OUT_TOLERANCE.source,
    ),
    ...(hasBox
      ? [
          assume(
            "finset.verify.checks[].lengths",
            say`${length(DEPTH_TOLERANCE_M.value, "fine")}`,
            "a depth stop, and a box's height over the surface, are held to about half a millimetre",
            DEPTH_TOLERANCE_M.source,
          ),
        ]
      : []),
  ];
}

function assumeOfPlug(plug: LeashPlugInput): readonly Assumption[] {
  return [
    ...(plug.side === undefined
      ? [assume("fins.leashPlug.side", say`left`, "the leash plug's side is not given", "convention")]
      : []),
    ...(plug.diameterM === undefined
      ? [
          assume(
            "fins.leashPlug.diameter",
            say`${length(LEASH_PLUG.diameterM)}`,
            "the leash plug's diameter is not given, so its room is reckoned for a common one",
            LEASH_PLUG.source,
          ),
        ]
      : []),
  ];
}
