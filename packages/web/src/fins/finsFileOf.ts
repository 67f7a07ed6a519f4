import type { FinFile, FinsFile } from "@lapline/contract";
import { angle, type FinInput, type FinsInput, formatQuantity, length, type Units } from "@lapline/engine";

/**
 * A set of fins worked out by the engine as it stands in a board file, its lengths in the reader's units to the finest
 * step of a tape. What the file says of boxes, plug and the fins' own shape stays as it was typed; readings of fins that
 * stood elsewhere go.
 */
export function finsFileOf(fins: FinsInput, current: FinsFile | undefined, units: Units): FinsFile {
  const { asSet: _set, verify: _read, ...kept } = current ?? {};
  return {
    ...kept,
    arrangement: fins.arrangement,
    ...(fins.fromTailBy === undefined ? {} : { fromTailBy: fins.fromTailBy }),
    ...(fins.fromTailOf === undefined ? {} : { fromTailOf: fins.fromTailOf }),
    set: fins.set.map((fin) =>
      finFileOf(
        fin,
        current?.set.find((other) => other.fin === fin.fin),
        units,
      ),
    ),
  };
}

function finFileOf(fin: FinInput, current: FinFile | undefined, units: Units): FinFile {
  const text = (valueM: number): string => formatQuantity(length(valueM, "fine"), units);
  const { depth, sweep, foil, box } = current ?? {};
  return {
    fin: fin.fin,
    fromTail: text(fin.fromTailM),
    ...(fin.fromRailM === undefined ? {} : { fromRail: text(fin.fromRailM) }),
    ...(fin.fromRailBy === undefined ? {} : { fromRailBy: fin.fromRailBy }),
    base: text(fin.baseM),
    ...(fin.toe === undefined ? {} : { toe: toeFileOf(fin.toe, text) }),
    ...(fin.cantRad === undefined ? {} : { cant: formatQuantity(angle(fin.cantRad), units) }),
    ...(depth === undefined ? {} : { depth }),
    ...(sweep === undefined ? {} : { sweep }),
    ...(foil === undefined ? {} : { foil }),
    ...(box === undefined ? {} : { box }),
  };
}

function toeFileOf(
  toe: NonNullable<FinInput["toe"]>,
  text: (valueM: number) => string,
): NonNullable<FinFile["toe"]> {
  switch (toe.kind) {
    case "aimBesideNose":
      return { aimBesideNose: text(toe.offsetM) };
    case "aimBeyondNose":
      return { aimBeyondNose: text(toe.beyondM) };
    case "overBase":
      return { overBase: text(toe.overM) };
    case "angle":
      return { angle: formatQuantity(angle(toe.angleRad, "fine"), "mm") };
    case "meets":
      return { meets: toe.fin };
  }
}
