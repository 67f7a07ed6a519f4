import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Board, buildBoardMesh, type Plan, planBuild } from "@lapline/engine";
import type { Solid } from "../../src/solid";

export interface SolidBoard {
  readonly name: string;
  readonly plan: Plan;
  readonly shape: NonNullable<Plan["shape"]>;
  readonly solid: Solid;
}

/** How much wider the left half of the lopsided board is than its right half, all along. */
export const LOPSIDED_M = 0.012;

/** A demo board with its left half widened: only its shape matters. */
function widenLeft(board: Board): Board {
  const stations = board.survey.stations.map(({ leftM, ...station }) =>
    leftM === undefined ? station : { ...station, leftM: leftM + LOPSIDED_M },
  );
  return { ...board, name: `lopsided "A & B" <left>`, survey: { ...board.survey, stations } };
}

function make(board: Board): SolidBoard {
  const plan = planBuild(board);
  const mesh = buildBoardMesh(board.survey);
  if (plan.shape === null || mesh === null) throw new Error(`${board.name} has no shape`);
  return {
    name: board.name,
    plan,
    shape: plan.shape,
    solid: { name: board.name, engine: plan.engine, mesh },
  };
}

const demo = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`${id} cannot be read`);
  return read.board;
});

export const LOPSIDED = make(widenLeft(demo[0] ?? Object(null)));
export const SOLID_BOARDS: readonly SolidBoard[] = [...demo.map(make), LOPSIDED];
