import { FOAM_KINDS, type FoamKind } from "../constants/foams";
import type { BoxTiming } from "../finset/FinsInput";
import type { Finish, LapKind } from "../layup/GlassInput";
import type { Face, LayupPlan } from "../layup/LayupPlan";
import { findFoamIn } from "../materials/listBlanks";
import type { StepsInput } from "./StepsInput";

/** What decides which steps a board calls for. */
export interface Choices {
  readonly finish: Finish;
  /** Null for a board without fins. */
  readonly boxes: BoxTiming | null;
  /** Null for a board without leash plug. It goes in with the boxes; glassed-on fins bring none, and it follows the fill coat. */
  readonly plug: Exclude<BoxTiming, "glassed-on"> | null;
  readonly isSealed: boolean;
  /** Where the foam is not known too: what is safe on polystyrene is safe on the others. */
  readonly isPolystyrene: boolean;
  /** Null where it is not known. */
  readonly foam: FoamKind | null;
  readonly lapKind: LapKind;
  /** Whether cloth is laid on that face; all are taken to have some where the lay-up is not known. */
  readonly hasCloth: Readonly<Record<Face, boolean>>;
  readonly hasLogos: boolean;
  readonly hasPinline: boolean;
  readonly hasVent: boolean;
}

/** The choices as layup and finset took them; what they took by default they have told. */
export function readChoices(board: StepsInput, layup: LayupPlan | null): Choices {
  const { blank, glass, materials } = board;
  const kind = blank === undefined ? null : (findFoamIn(materials, blank.foam)?.kind ?? null);
  const usuallySealed = kind === null ? false : FOAM_KINDS[kind].isSealedFirst;
  const boxes = board.fins === undefined ? null : (board.fins.boxes ?? "after-fill");
  const withBoxes = boxes === null || boxes === "glassed-on" ? "after-fill" : boxes;
  return {
    finish: board.glass?.finish ?? "sanded",
    boxes,
    plug: board.fins?.leashPlug === undefined ? null : withBoxes,
    isSealed: layup?.coats.some((coat) => coat.kind === "seal") ?? board.glass?.seal ?? usuallySealed,
    isPolystyrene: kind === null || FOAM_KINDS[kind].dissolvesInStyrene,
    foam: kind,
    lapKind: glass?.lapKind ?? "free",
    hasCloth: { bottom: isLaid(layup, "bottom"), deck: isLaid(layup, "deck") },
    hasLogos: glass?.logos === true,
    hasPinline: glass?.pinline === true,
    hasVent: blank?.vent === true,
  };
}

function isLaid(layup: LayupPlan | null, face: Face): boolean {
  return layup?.coats.some(({ id }) => id === `laminate-${face}`) ?? true;
}
