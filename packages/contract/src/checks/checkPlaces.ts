import { say, TAPE_OVER_STRAIGHT } from "@lapline/engine";
import type { Fault, Step } from "../reading/Fault";
import { bothSystems } from "./bothSystems";
import { countAt, lengthAt, textAt } from "./readings";

const SECTION: readonly Step[] = ["survey", "section"];

/** Places along the board other than stations: inside its length, in order, and not twice the same. */
export function checkPlaces(document: unknown): Fault[] {
  const sections = Array.from({ length: countAt(document, SECTION) }, (_, i): Step[] => [...SECTION, i]);
  const bottomLists = [SECTION, ...sections].map((at): Step[] => [...at, "bottom"]);
  const setPlaces = elements(document, ["fins", "set"], "fromTail");
  const patchPlaces = ["fromTail", "to"].flatMap((field) => elements(document, ["glass", "patches"], field));
  return [
    ...[SECTION, ...bottomLists].flatMap((list) =>
      checkDistinct(document, elements(document, list, "fromTail")),
    ),
    ...[...setPlaces, ...patchPlaces, ["fins", "leashPlug", "fromTail"]].flatMap((at) =>
      checkInside(document, at),
    ),
    ...checkPatches(document),
    ...checkHours(document),
  ];
}

function elements(document: unknown, list: readonly Step[], field: string): Step[][] {
  return Array.from({ length: countAt(document, list) }, (_, i) => [...list, i, field]);
}

function checkDistinct(document: unknown, places: readonly Step[][]): Fault[] {
  const seen = new Set<number>();
  return places.flatMap((steps) => {
    const placeM = lengthAt(document, steps);
    if (placeM === null) return [];
    // 12 in and 1 ft differ in the last bit.
    const micrometres = Math.round(placeM * 1e6);
    const isRepeat = seen.has(micrometres);
    seen.add(micrometres);
    return isRepeat ? [{ steps, says: say`the same place twice: give one of them, or another place` }] : [];
  });
}

/** A patch may run to the very end by the tape, which reads a little more than a straight length. */
function checkInside(document: unknown, steps: readonly Step[]): Fault[] {
  const lengthM = lengthAt(document, ["survey", "length"]);
  const placeM = lengthAt(document, steps);
  if (lengthM === null || placeM === null || placeM <= lengthM * TAPE_OVER_STRAIGHT.value) return [];
  return [{ steps, says: say`outside the board, which is ${bothSystems(lengthM)} long: is the unit right?` }];
}

function checkPatches(document: unknown): Fault[] {
  return elements(document, ["glass", "patches"], "to").flatMap((steps) => {
    const fromM = lengthAt(document, [...steps.slice(0, -1), "fromTail"]);
    const toM = lengthAt(document, steps);
    if (fromM === null || toM === null || toM > fromM) return [];
    return [
      { steps, says: say`a patch runs from "fromTail" towards the nose: "to" is the larger of the two` },
    ];
  });
}

function checkHours(document: unknown): Fault[] {
  const from = textAt(document, ["shop", "hours", "from"]);
  const to = textAt(document, ["shop", "hours", "to"]);
  if (from === null || to === null || from < to) return [];
  return [
    {
      steps: ["shop", "hours", "to"],
      says: say`the working day ends after it begins: "to" is later than "from"`,
    },
  ];
}
