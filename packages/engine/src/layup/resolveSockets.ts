import { LEASH_PLUG, LONG_BOX, SIDE_BOX } from "../constants/fittings";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import type { Body } from "../geometry/bodyVolume";
import type { BoardShape } from "../shape/BoardShape";
import { assume } from "../sources/assume";
import type { FittingsInput } from "./FittingsInput";
import type { Socket } from "./Socket";

/**
 * The boxes and the plug that resin is poured around, two boxes for a fin that is set from the rail and one for a fin on the
 * centreline. Sizes that the board file leaves out are generic and said. Glassed-on fins have no box.
 * @returns sockets in the order of the set, the plug last; null with a blocker where a size is not above nought
 */
export function resolveSockets(fins: FittingsInput | undefined, shape: BoardShape): Stage<readonly Socket[]> {
  if (fins === undefined) {
    const none = assume("fins", say`no boxes, no plug`, "the board file has no fins part", "convention");
    return { value: [], findings: [], assumptions: [none] };
  }
  const noBoxes = { value: [], findings: [], assumptions: [] };
  const boxes = fins.boxes === "glassed-on" ? noBoxes : resolveBoxes(fins, shape);
  const plug = resolvePlug(fins);
  const value = boxes.value === null || plug.value === null ? null : [...boxes.value, ...plug.value];
  return {
    value,
    findings: [...boxes.findings, ...plug.findings],
    assumptions: [...boxes.assumptions, ...plug.assumptions],
  };
}

function resolveBoxes(fins: FittingsInput, shape: BoardShape): Stage<readonly Socket[]> {
  const sockets: Socket[] = [];
  const findings: Finding[] = [];
  const assumptions: Assumption[] = [];
  fins.set.forEach((fin, i) => {
    const path = `fins.set[${i}].box`;
    const isLong = fin.fromRailM === undefined && ["single", "single-sides"].includes(fins.arrangement);
    const generic = isLong ? LONG_BOX : SIDE_BOX;
    const size = fin.box ?? generic;
    if (fin.box === undefined)
      assumptions.push(assume(path, sizeText(size), "no box size was given", generic.source));
    if (!isPositive(size.lengthM, size.widthM, size.depthM)) findings.push(notASize(path));
    const body: Body = {
      form: "block",
      lengthM: size.lengthM,
      widthM: size.widthM,
      depthM: size.depthM,
    };
    const names = fin.fromRailM === undefined ? [fin.fin] : [`${fin.fin}-left`, `${fin.fin}-right`];
    const fromTailTapeM = placeAlong(fins, shape, fin.fromTailM);
    for (const id of names) sockets.push({ id, kind: "box", body, fromTailTapeM });
  });
  return { value: findings.length > 0 ? null : sockets, findings, assumptions };
}

function sizeText(size: NonNullable<FittingsInput["set"][number]["box"]>) {
  return say`a box ${length(size.lengthM)} long, ${length(size.widthM)} wide and ${length(size.depthM)} deep`;
}

/** Straight distances become tape; a mark counted from the crotch, or off the board, is left unplaced: finset places it. */
function placeAlong(fins: FittingsInput, shape: BoardShape, fromTailM: number): number | null {
  if (fins.fromTailOf === "crotch") return null;
  if (!(fromTailM >= 0 && fromTailM <= shape.lengthM)) return null;
  return fins.fromTailBy === "straight" ? shape.tapeFromStraightM(fromTailM) : fromTailM;
}

function resolvePlug(fins: FittingsInput): Stage<readonly Socket[]> {
  const plug = fins.leashPlug;
  if (plug === undefined) return { value: [], findings: [], assumptions: [] };
  const diameterM = plug.diameterM ?? LEASH_PLUG.diameterM;
  const depthM = plug.depthM ?? LEASH_PLUG.depthM;
  if (!isPositive(diameterM, depthM)) {
    return { value: null, findings: [notASize("fins.leashPlug")], assumptions: [] };
  }
  const isAssumed = plug.diameterM === undefined || plug.depthM === undefined;
  const taken = say`a plug ${length(diameterM)} across and ${length(depthM)} deep`;
  return {
    value: [
      { id: "leash-plug", kind: "plug", body: { form: "cylinder", diameterM, depthM }, fromTailTapeM: null },
    ],
    findings: [],
    assumptions: isAssumed
      ? [assume("fins.leashPlug", taken, "not all of the plug's size was given", LEASH_PLUG.source)]
      : [],
  };
}

function isPositive(...sizes: readonly number[]): boolean {
  return sizes.every((size) => size > 0 && Number.isFinite(size));
}

function notASize(path: string): Finding {
  return finding(
    "blocker",
    "layup.box-size",
    path,
    say`a box or plug needs a length, width and depth above nought`,
  );
}
