import { buildBoardMesh, planBuild } from "@lapline/engine";
import type { Command } from "../Command";
import { readBoard } from "../readBoard";
import { writeWhole } from "../writeWhole";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { tellState } from "./tellState";

const ENDINGS = [".3mf", ".glb"] as const;

export const meshCommand: Command = {
  name: "mesh",
  needs: ["FILE"],
  says: "the surveyed solid, to look at from all sides or to mill",
  options: {
    output: {
      short: "o",
      value: "OUT.3mf|.glb",
      needed: true,
      says: "the file to write: 3MF in millimetres, or glTF in metres",
    },
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const reader = readReader(words);
    const [file = ""] = words.given;
    const { path, ending } = readOutputPath(words.options.output, { endings: ENDINGS, keeps: [file] });
    const board = await readBoard(file, terminal);
    const plan = planBuild(board);
    const mesh = buildBoardMesh(board.survey);
    if (mesh === null) refuseBlocked("There is no solid", { plan, reader });
    // Only here, so that the other commands start without it.
    const { solid3mf, solidGlb } = await import("@lapline/present/solid");
    const solid = { name: board.name, engine: plan.engine, mesh };
    await writeWhole(path, ending === ".3mf" ? solid3mf(solid) : await solidGlb(solid));
    terminal.print(path);
    return tellState(plan, { reader, terminal });
  },
};
