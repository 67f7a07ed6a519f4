import { PATCH_EXTENTS } from "../constants/patchExtents";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { FittingsInput } from "./FittingsInput";
import type { PatchInput } from "./GlassInput";
import type { Skin } from "./Skin";

interface PatchPlace {
  readonly fromTailM: number;
  readonly toM: number;
  readonly widthM: number | undefined;
}

interface Known {
  readonly skin: Skin | null;
  readonly fins: FittingsInput | undefined;
  /** A tape that is narrower than a usual strip is laid as wide as it comes; infinite where it is not known. */
  readonly clothWidthM: number;
}

/**
 * Where a patch lies: as measured, or over the part of the board that it names, with the usual extent where none is given.
 * @returns null with a blocker where nothing says where it lies; null alone while the board's length is not known
 */
export function placePatch(input: PatchInput, path: string, known: Known): Stage<PatchPlace> {
  const { over, fromTailM, toM, widthM } = input;
  if (over === undefined) {
    if (fromTailM !== undefined && toM !== undefined) return plain({ fromTailM, toM, widthM });
    const says = say`say where the patch lies: fromTail and to, or over: tail, deck, nose, fins or strip`;
    return { value: null, findings: [finding("blocker", "layup.patch-where", path, says)], assumptions: [] };
  }
  if (over === "fins" && (known.fins === undefined || known.fins.set.length === 0)) {
    const says = say`a patch under the fins follows their marks: set the fins first, or measure the patch`;
    const missing = finding("blocker", "layup.patch-no-fins", `${path}.over`, says);
    return { value: null, findings: [missing], assumptions: [] };
  }
  if (known.skin === null) return { value: null, findings: [], assumptions: [] };
  const usual = usualPlace(over, known.skin.lengthTapeM, known);
  const place = {
    fromTailM: fromTailM ?? usual.fromTailM,
    toM: toM ?? usual.toM,
    widthM: widthM ?? usual.widthM,
  };
  const taken = say`from ${length(place.fromTailM)} to ${length(place.toM)} off the tail, by tape`;
  return {
    value: place,
    findings: [],
    assumptions:
      fromTailM !== undefined && toM !== undefined
        ? []
        : [assume(path, taken, "the patch names its part of the board", "common-practice")],
  };
}

function plain(value: PatchPlace): Stage<PatchPlace> {
  return { value, findings: [], assumptions: [] };
}

function usualPlace(
  over: NonNullable<PatchInput["over"]>,
  lengthTapeM: number,
  { fins, clothWidthM }: Known,
): PatchPlace {
  const { tailM, deckShare, noseM, beyondFinsM, stripWidthM } = PATCH_EXTENTS;
  const end = (toM: number) => Math.min(toM, lengthTapeM);
  switch (over) {
    case "tail":
      return { fromTailM: 0, toM: end(tailM.value), widthM: undefined };
    case "deck":
      return { fromTailM: 0, toM: deckShare.value * lengthTapeM, widthM: undefined };
    case "nose":
      return { fromTailM: Math.max(lengthTapeM - noseM.value, 0), toM: lengthTapeM, widthM: undefined };
    case "strip":
      return { fromTailM: 0, toM: lengthTapeM, widthM: Math.min(stripWidthM.value, clothWidthM) };
    case "fins": {
      const set = fins?.set ?? [];
      const backM = Math.min(...set.map((fin) => fin.fromTailM));
      const frontM = Math.max(...set.map((fin) => fin.fromTailM + (fin.baseM ?? 0)));
      return {
        fromTailM: Math.max(backM - beyondFinsM.value, 0),
        toM: end(frontM + beyondFinsM.value),
        widthM: undefined,
      };
    }
  }
}
