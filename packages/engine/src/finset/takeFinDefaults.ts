import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import type { Assumption } from "../foundation/stage";
import { SOURCES } from "../sources/sources";
import type { FinInput, FinsInput, LeashPlugInput } from "./FinsInput";
import { assumeSetting } from "./verify/assumeSetting";

const CONVENTION = SOURCES.convention.title;
const PRACTICE = SOURCES["common-practice"].title;

/** What nobody gave, filled in. */
export interface FinDefaults {
  readonly sides: NonNullable<FinsInput["sides"]>;
  readonly boxes: NonNullable<FinsInput["boxes"]>;
  readonly toleranceM: number;
  readonly assumptions: readonly Assumption[];
}

/** Fills in what the fins' part of a board file leaves out, and says each thing that it took. */
export function takeFinDefaults(fins: FinsInput): FinDefaults {
  const assumptions: Assumption[] = [];
  const take = (given: unknown, assumption: Assumption) => {
    if (given === undefined) assumptions.push(assumption);
  };
  take(fins.sides, {
    path: "fins.sides",
    value: "average",
    why: "both sides are measured from their own rail and both fins stand at the mean, so that a board out of true does not turn one fin against the other",
    source: PRACTICE,
  });
  take(fins.boxes, {
    path: "fins.boxes",
    value: "after-fill",
    why: "the boxes are set after the fill coat",
    source: PRACTICE,
  });
  take(fins.fromTailBy, {
    path: "fins.fromTailBy",
    value: "tape",
    why: "distances from the tail are read with a tape along the bottom",
    source: CONVENTION,
  });
  take(fins.fromTailOf, {
    path: "fins.fromTailOf",
    value: "tips",
    why: "and from a straightedge across the tail tips",
    source: CONVENTION,
  });
  take(fins.toleranceM, {
    path: "fins.tolerance",
    value: "1 mm",
    why: "a careful set-out is held to about a millimetre",
    source: PRACTICE,
  });
  fins.set.forEach((fin, i) => {
    assumptions.push(...assumeOfFin(fin, `fins.set[${i}]`));
  });
  if (fins.set.some(({ fromRailM }) => fromRailM !== undefined))
    assumptions.push({
      path: "finset.marks[].bottomTiltRad",
      value: "the section curve",
      why: "the bottom's slope under the cant gauge is that of the section's curve, which cannot draw a tucked edge: near the rail it slopes more than a bottom that is flat to its edge, and the true cant with it",
      source: CONVENTION,
    });
  if (fins.leashPlug !== undefined) assumptions.push(...assumeOfPlug(fins.leashPlug));
  assumptions.push(...assumeSetting(fins, fins.boxes ?? "after-fill"));
  return {
    sides: fins.sides ?? "average",
    boxes: fins.boxes ?? "after-fill",
    toleranceM: fins.toleranceM ?? SET_OUT_TOLERANCE.markM,
    assumptions,
  };
}

function assumeOfFin(fin: FinInput, path: string): readonly Assumption[] {
  const isPair = fin.fromRailM !== undefined;
  const assumptions: Assumption[] = [];
  if (isPair && fin.fromRailBy === undefined)
    assumptions.push({
      path: `${path}.fromRailBy`,
      value: "square-to-centreline",
      why: "the distance from the rail is read square to the centreline",
      source: CONVENTION,
    });
  if (isPair && fin.toe === undefined)
    assumptions.push({
      path: `${path}.toe`,
      value: "0°",
      why: "no toe is given, so the fin stands along the centreline",
      source: CONVENTION,
    });
  if (isPair && fin.cantRad === undefined)
    assumptions.push({
      path: `${path}.cant`,
      value: "0°",
      why: "no cant is given, so the fin stands square to the bottom",
      source: CONVENTION,
    });
  if (fin.box !== undefined && fin.box.behindTrailingM === undefined)
    assumptions.push({
      path: `${path}.box.behindTrailing`,
      value: "centred",
      why: "how far the box reaches behind the mark is not given, so the base stands in its middle",
      source: CONVENTION,
    });
  return assumptions;
}

function assumeOfPlug(plug: LeashPlugInput): readonly Assumption[] {
  if (plug.side !== undefined) return [];
  return [
    {
      path: "fins.leashPlug.side",
      value: "left",
      why: "the leash plug's side is not given",
      source: CONVENTION,
    },
  ];
}
