import { formatProblems, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { jobSheetPdf, SheetTooLongError } from "@lapline/present/paper";
import type { SheetMade, SheetTask } from "./SheetTask";

/** The plan of a board as JSON, and its Sheet as a PDF. The same task gives the same bytes. */
export async function makeSheet({ text, ...asked }: SheetTask): Promise<SheetMade> {
  const read = readBoardFile(text);
  if (!read.ok) return { kind: "not-made", why: formatProblems(read.problems) };
  const { order } = read.board;
  const plan = planBuild(read.board);
  try {
    const pdf = await jobSheetPdf({ ...asked, plan, ...(order === undefined ? {} : { order }) });
    return { kind: "made", plan: new TextEncoder().encode(JSON.stringify(plan)), pdf };
  } catch (error) {
    if (error instanceof SheetTooLongError) return { kind: "not-made", why: error.message };
    throw error;
  }
}
