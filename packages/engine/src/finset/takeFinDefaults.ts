import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import { LEASH_PLUG } from "../constants/fittings";
import { say } from "../foundation/phrase";
import { type Assumption, type Finding, finding } from "../foundation/stage";
import { assumeFins } from "./assumeFins";
import type { FilledFin, FilledFins } from "./FilledFins";
import type { FinInput, FinsInput } from "./FinsInput";

export interface FinDefaults {
  readonly fins: FilledFins;
  readonly findings: readonly Finding[];
  readonly assumptions: readonly Assumption[];
}

/** Fills in what the fins' part of a board file leaves out, and says each thing that it took or left aside. */
export function takeFinDefaults(given: FinsInput): FinDefaults {
  const { leashPlug, ...others } = given;
  const boxes = given.boxes ?? "after-fill";
  const fins: FilledFins = {
    ...others,
    sides: given.sides ?? "average",
    boxes,
    fromTailBy: given.fromTailBy ?? "tape",
    fromTailOf: given.fromTailOf ?? "tips",
    toleranceM: given.toleranceM ?? SET_OUT_TOLERANCE.markM,
    set: given.set.map((fin) => fillFin(boxes === "glassed-on" ? withoutBox(fin) : fin)),
    ...(leashPlug && {
      leashPlug: {
        ...leashPlug,
        side: leashPlug.side ?? "left",
        diameterM: leashPlug.diameterM ?? LEASH_PLUG.diameterM,
      },
    }),
  };
  return { fins, findings: tellBoxes(given), assumptions: assumeFins(given) };
}

function withoutBox({ box: _, ...fin }: FinInput): FinInput {
  return fin;
}

function fillFin({ box, ...fin }: FinInput): FilledFin {
  return {
    ...fin,
    fromRailBy: fin.fromRailBy ?? "square-to-centreline",
    cantRad: fin.cantRad ?? 0,
    ...(box && { box: { ...box, behindTrailingM: box.behindTrailingM ?? (box.lengthM - fin.baseM) / 2 } }),
  };
}

function tellBoxes({ boxes, set }: FinsInput): readonly Finding[] {
  if (boxes !== "glassed-on" || set.every(({ box }) => box === undefined)) return [];
  const says = say`the fins are glassed on, so the boxes given for them are left aside`;
  return [finding("note", "finset.box-glassed-on", "fins.boxes", says)];
}
