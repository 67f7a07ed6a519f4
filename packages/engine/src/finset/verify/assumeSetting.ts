import {
  BOX_PATCH_OVERLAP_M,
  CURE_BEFORE_LOAD_S,
  GLASSED_ON,
  PLUG_PATCH_OVERLAP_M,
  PLUG_PULL_MASS_KG,
  PROUD_M,
} from "../../constants/finSetting";
import { POCKET_GAP_M } from "../../constants/fittings";
import { say } from "../../foundation/phrase";
import { duration, length, mass } from "../../foundation/quantity";
import type { Assumption } from "../../foundation/stage";
import { assume } from "../../sources/assume";
import type { BoxTiming, FinsInput } from "../FinsInput";
import { usualSurface } from "./usualSurface";

/** What is taken of setting boxes, bases and plug, where a board file has no say in it. */
export function assumeSetting(fins: FinsInput, boxes: BoxTiming): readonly Assumption[] {
  const hasBox = fins.set.some(({ box }) => box !== undefined);
  return [
    ...(boxes === "glassed-on" ? assumeGlassedOn() : hasBox ? assumeBoxes(fins, boxes) : []),
    ...(fins.leashPlug === undefined ? [] : assumePlug()),
  ];
}

const CURE = say`${duration(CURE_BEFORE_LOAD_S.value)}, or what the resin's sheet asks for where that is longer`;
const SURFACES = { foam: "the foam", laminate: "the laminate", fill: "the fill coat" } as const;

function assumeBoxes({ verify }: FinsInput, boxes: BoxTiming): readonly Assumption[] {
  const surface = verify?.on ?? usualSurface(boxes);
  const proud = assume(
    "finset.verify.boxes[].proudM",
    say`${length(PROUD_M[surface].value, "fine")} above ${SURFACES[surface]}`,
    "a box is set a little proud and sanded flush; the glass under the router is not counted, so the stop is set from the surface that is there",
    PROUD_M[surface].source,
  );
  const pocket = assume(
    "finset.verify.boxes[].cutOut",
    say`${length(POCKET_GAP_M.value, "fine")} around and beneath the box, its corners square`,
    "room for resin on every side",
    POCKET_GAP_M.source,
  );
  const after = assume(
    "finset.verify.boxes[].cureBeforeLoadS",
    CURE,
    "a box that is loaded or sanded early moves",
    CURE_BEFORE_LOAD_S.source,
  );
  const patch = assume(
    "finset.verify.boxes[].patch",
    say`${length(BOX_PATCH_OVERLAP_M.value)} beyond the box all round`,
    "cloth over the box ties it to the laminate",
    BOX_PATCH_OVERLAP_M.source,
  );
  return [proud, pocket, ...(boxes === "after-fill" ? [] : [patch]), after];
}

function assumeGlassedOn(): readonly Assumption[] {
  const { filletRadiusM, tackLengthM, patchOverlapM, source } = GLASSED_ON;
  return [
    assume(
      "finset.verify.glassedOn[]",
      say`fillets of ${length(filletRadiusM)} radius, tacks ${length(tackLengthM)} long at both ends, cloth ${length(patchOverlapM)} up the fin and out on the bottom`,
      "how a fin is glassed on is not in the board file",
      source,
    ),
    assume(
      "finset.verify.glassedOn[].cureBeforeLoadS",
      CURE,
      "a base that is loaded early cracks its fillet",
      CURE_BEFORE_LOAD_S.source,
    ),
  ];
}

function assumePlug(): readonly Assumption[] {
  return [
    assume(
      "finset.leashPlug.cureBeforeLoadS",
      CURE,
      "a plug that is pulled early comes loose later",
      CURE_BEFORE_LOAD_S.source,
    ),
    assume(
      "finset.leashPlug.pullTestN",
      say`the weight of ${{ ...mass(PLUG_PULL_MASS_KG.value), grain: "coarse" }}, straight up`,
      "a plug that was never pulled is not ready; how hard is a declared convention, about what one person pulls, with no published figure behind it",
      PLUG_PULL_MASS_KG.source,
    ),
    assume(
      "finset.leashPlug.patchDiameterM",
      say`${length(PLUG_PATCH_OVERLAP_M.value)} beyond the plug all round`,
      "cloth over the plug spreads its pull",
      PLUG_PATCH_OVERLAP_M.source,
    ),
  ];
}
