import { type BoardFile, readPlainBoard } from "@lapline/contract";
import {
  type Board,
  buildBoardMesh,
  buildHouseSetOffers,
  type HouseSet,
  type HouseSetOffer,
  type Mesh,
  type MeshDetail,
  type SurveyInput,
} from "@lapline/engine";
import { planBoard } from "./planBoard";
import { type Understood, understand } from "./understand";

/** A file's text, to be planned where all is well with it; or a file, typed on from a known one, as far as it is understood. */
export type PlanAsked = { readonly text: string } | { readonly file: BoardFile; readonly known: BoardFile };

/** The surveyed board as a solid. */
export interface MeshAsked {
  readonly survey: SurveyInput;
  readonly detail: MeshDetail;
}

/** A house set, put on a board. */
export interface OffersAsked {
  readonly on: Pick<Board, "survey" | "fins">;
  readonly set: HouseSet;
}

export type Asked = PlanAsked | MeshAsked | OffersAsked;

/** Each part as text of its own: read faster than it is copied, and a part that is as it was need not be read again. */
export type PartTexts = Readonly<Record<string, string>>;

export interface PlanAnswer {
  /** Under `all`. */
  readonly problems: PartTexts;
  readonly good: { readonly board: PartTexts; readonly file: string; readonly plan: PartTexts } | null;
}

/** Null where the readings make no solid. */
export interface MeshAnswer {
  readonly mesh: Mesh | null;
}

export interface OffersAnswer {
  readonly offers: readonly HouseSetOffer[];
}

export type Answer = PlanAnswer | MeshAnswer | OffersAnswer;

/** Where planning itself failed, why. */
export interface PlanFailed {
  readonly why: string;
}

/** What the planning thread answers, in kind. */
export function answerAsked(asked: Asked): Answer {
  if ("survey" in asked) return { mesh: buildBoardMesh(asked.survey, asked.detail) };
  if ("set" in asked) return { offers: buildHouseSetOffers(asked.on, asked.set) };
  return answerPlan(asked);
}

/** Plan, board and file hold nothing that JSON does not. */
function answerPlan(asked: PlanAsked): PlanAnswer {
  if ("text" in asked) {
    const read = readPlainBoard(asked.text);
    return inTexts({ problems: [], good: read && planBoard(read) });
  }
  return inTexts(understand(asked.file, asked.known));
}

function inTexts({ problems, good }: Understood): PlanAnswer {
  return {
    problems: partTexts({ all: problems }),
    good: good && {
      board: partTexts(good.board),
      file: JSON.stringify(good.file),
      plan: partTexts(good.plan),
    },
  };
}

function partTexts(whole: object): PartTexts {
  const parts = Object.entries(whole).filter(([, part]) => part !== undefined);
  return Object.fromEntries(parts.map(([name, part]) => [name, JSON.stringify(part)]));
}
