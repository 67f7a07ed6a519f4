import { say, TAPE_OVER_STRAIGHT } from "@lapline/engine";
import type { Fault, Step } from "../reading/Fault";
import { bothSystems } from "./bothSystems";
import { countAt, isGiven, lengthAt, textAt } from "./readings";

/** What must hold between the readings of a station, and between a station and the length. */
export function checkStations(document: unknown): Fault[] {
  const stations: Step[] = ["survey", "stations"];
  return Array.from({ length: countAt(document, stations) }, (_, i): Step[] => [...stations, i]).flatMap(
    (at) => [...checkPlace(document, at), ...checkSides(document, at), ...checkThickness(document, at)],
  );
}

function checkPlace(document: unknown, at: readonly Step[]): Fault[] {
  const given = ["fromTail", "fromNose"].filter((field) => isGiven(document, [...at, field]));
  const [field] = given;
  if (field === undefined) {
    return [{ steps: at, read: "no place", says: say`say where the station is: "fromTail" or "fromNose"` }];
  }
  if (given.length === 2) {
    return [
      {
        steps: at,
        read: "fromTail and fromNose",
        says: say`say where the station is once: keep one of the two`,
      },
    ];
  }
  const lengthM = lengthAt(document, ["survey", "length"]);
  const placeM = lengthAt(document, [...at, field]);
  if (lengthM === null || placeM === null || placeM <= lengthM * allowance(document) + ROUND_OFF_M) return [];
  const says = say`outside the board, which is ${bothSystems(lengthM)} long: is the unit right, or was it read from the other end?`;
  return [{ steps: [...at, field], says }];
}

/** 6 ft and 72 in differ in the last bit. */
const ROUND_OFF_M = 1e-9;

function allowance(document: unknown): number {
  const lengthBy = textAt(document, ["survey", "lengthBy"]) ?? "tape";
  const stationsBy = textAt(document, ["survey", "stationsBy"]) ?? "tape";
  return lengthBy === "straight" && stationsBy === "tape" ? TAPE_OVER_STRAIGHT.value : 1;
}

function checkSides(document: unknown, at: readonly Step[]): Fault[] {
  const hasLeft = isGiven(document, [...at, "left"]);
  const hasRight = isGiven(document, [...at, "right"]);
  const hasWidth = isGiven(document, [...at, "width"]);
  if (hasLeft && hasRight && hasWidth) {
    return [{ steps: [...at, "width"], says: say`leave "width" out where "left" and "right" are given` }];
  }
  if (hasLeft === hasRight) return [];
  const [given, missing] = hasLeft ? ["left", "right"] : ["right", "left"];
  const says = say`"${given}" was read without "${missing}": read both from the stringer, or give "width" alone`;
  return [{ steps: [...at, missing], says }];
}

function checkThickness(document: unknown, at: readonly Step[]): Fault[] {
  const thicknessM = lengthAt(document, [...at, "thickness"]);
  const leftM = lengthAt(document, [...at, "left"]);
  const rightM = lengthAt(document, [...at, "right"]);
  const wholeM = lengthAt(document, [...at, "width"]);
  const widthM = wholeM ?? (leftM === null || rightM === null ? null : leftM + rightM);
  // At the very tip both may be nought.
  if (thicknessM === null || widthM === null || widthM === 0 || thicknessM <= widthM) return [];
  const says = say`thicker than the board is wide there, ${bothSystems(widthM)}: were two readings swapped?`;
  return [{ steps: [...at, "thickness"], says }];
}
