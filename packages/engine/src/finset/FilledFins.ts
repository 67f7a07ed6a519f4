import type { Side } from "../survey/Side";
import type { BoxInput, FinInput, FinsInput, LeashPlugInput } from "./FinsInput";

/** The fins with what nobody gave filled in: nothing after it takes a default of its own. */
export interface FilledFins extends FinsInput {
  readonly sides: NonNullable<FinsInput["sides"]>;
  readonly boxes: NonNullable<FinsInput["boxes"]>;
  readonly fromTailBy: NonNullable<FinsInput["fromTailBy"]>;
  readonly fromTailOf: NonNullable<FinsInput["fromTailOf"]>;
  readonly toleranceM: number;
  readonly set: readonly FilledFin[];
  readonly leashPlug?: FilledPlug;
}

export interface FilledFin extends FinInput {
  readonly fromRailBy: NonNullable<FinInput["fromRailBy"]>;
  readonly cantRad: number;
  readonly box?: FilledBox;
}

export interface FilledBox extends BoxInput {
  readonly behindTrailingM: number;
}

export interface FilledPlug extends LeashPlugInput {
  readonly side: Side;
  readonly diameterM: number;
}
