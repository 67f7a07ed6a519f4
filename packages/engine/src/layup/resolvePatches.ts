import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Stage } from "../foundation/stage";
import type { MaterialsInput } from "../materials/MaterialsInput";
import { assume } from "../sources/assume";
import type { FittingsInput } from "./FittingsInput";
import { findCloth } from "./findCloth";
import type { GlassInput, PatchInput } from "./GlassInput";
import { placePatch } from "./placePatch";
import type { Patch, Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/** A tape's own millimetre: a patch that ends within it of the nose ends at the nose. */
const END_SLACK_M = 0.001;

const END_FOR_END: readonly number[] = [0, Math.PI];
/** Warp and weft weigh alike in plain cloth, so a patch may lie on either. */
const ANY_THREAD: readonly number[] = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];

/**
 * Patches with their extent checked against the board. Extents are read along the bottom.
 * @param known skin null where the shape is not known: then ends are not held against its length
 */
export function resolvePatches(glass: GlassInput, known: Known): Stage<readonly Patch[]> {
  const inputs = glass.patches ?? [];
  const stages = inputs.map((patch, i) => resolvePatch(patch, i, known));
  const patches = stages.map((stage) => stage.value).filter((patch): patch is Patch => patch !== null);
  const along = assume(
    "glass.patches",
    say`extents along the bottom; patches end at the rail's widest line`,
    "how patches were measured was not given",
    "convention",
  );
  const turning = assume(
    "glass.patches",
    say`a patch of plain cloth without an angle may be cut along or across the roll`,
    "warp and weft of plain cloth weigh alike",
    "common-practice",
  );
  return {
    value: patches.length === inputs.length ? patches : null,
    findings: stages.flatMap((stage) => stage.findings),
    assumptions: [
      ...stages.flatMap((stage) => stage.assumptions),
      ...(inputs.length > 0 ? [along] : []),
      ...(inputs.some((patch) => patch.angleRad === undefined) ? [turning] : []),
    ],
  };
}

interface Known {
  readonly skin: Skin | null;
  readonly materials: MaterialsInput | undefined;
  readonly fins: FittingsInput | undefined;
  readonly rollWidthM: Schedule["rollWidthM"];
}

function resolvePatch(input: PatchInput, index: number, known: Known): Stage<Patch> {
  const { skin, materials } = known;
  const path = `glass.patches[${index}]`;
  const cloth = findCloth(input.cloth, `${path}.cloth`, materials);
  const clothWidthM = cloth.value === null ? Number.POSITIVE_INFINITY : known.rollWidthM(cloth.value);
  const place = placePatch(input, path, { ...known, clothWidthM });
  const extent = place.value === null ? [] : checkExtent({ ...input, ...place.value }, path, skin);
  const findings = [...cloth.findings, ...place.findings, ...extent];
  const { assumptions } = place;
  if (cloth.value === null || place.value === null || findings.length > 0)
    return { value: null, findings, assumptions };
  const { fromTailM, toM, widthM } = place.value;
  const value: Patch = {
    id: `patch-${index + 1}`,
    face: input.face,
    cloth: cloth.value,
    fromTailTapeM: fromTailM,
    toTapeM: skin !== null && Math.abs(toM - skin.lengthTapeM) <= END_SLACK_M ? skin.lengthTapeM : toM,
    widthM,
    angleRad: input.angleRad ?? 0,
    turnsRad: input.angleRad === undefined && cloth.value.weave === "plain" ? ANY_THREAD : END_FOR_END,
  };
  return { value, findings, assumptions };
}

interface Extent {
  readonly fromTailM: number;
  readonly toM: number;
  readonly widthM: number | undefined;
  readonly angleRad?: number;
}

function checkExtent(input: Extent, path: string, skin: Skin | null): Finding[] {
  const findings: Finding[] = [];
  const block = (code: string, at: string, says: ReturnType<typeof say>) =>
    findings.push(finding("blocker", code, `${path}.${at}`, says));
  if (!(input.fromTailM >= 0 && Number.isFinite(input.toM) && input.toM > input.fromTailM)) {
    block(
      "layup.patch-order",
      "to",
      say`a patch runs from nearer the tail to farther from it: fromTail below to`,
    );
  } else if (skin !== null && input.toM > skin.lengthTapeM + END_SLACK_M) {
    const says = say`the patch ends ${length(input.toM)} from the tail; the bottom is ${length(skin.lengthTapeM)} long`;
    block("layup.patch-outside", "to", says);
  }
  if (input.widthM !== undefined && !(input.widthM > 0 && Number.isFinite(input.widthM))) {
    block("layup.patch-width", "width", say`a patch's width is above nought`);
  }
  if (input.angleRad !== undefined && !Number.isFinite(input.angleRad)) {
    block("layup.patch-angle", "angle", say`a patch's angle is a number of degrees`);
  }
  return findings;
}
