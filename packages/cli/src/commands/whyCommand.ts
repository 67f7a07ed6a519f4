import { computeSensitivity, explain, planBuild, say } from "@lapline/engine";
import { formatWhyText } from "@lapline/present";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoard } from "../readBoard";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { tellState } from "./tellState";

export const whyCommand: Command = {
  name: "why",
  needs: ["FILE", "PATH"],
  says: "how one number came about: formula, inputs, sources, what was assumed, what would change it most",
  options: { ...READER_OPTIONS },
  async run(words, terminal) {
    const reader = readReader(words);
    const [file = "", path = ""] = words.given;
    const board = await readBoard(file, terminal);
    const plan = planBuild(board);
    const explanation = explain(board, plan, path);
    if ("message" in explanation) throw new RefusedError(say`${explanation.message}`);
    terminal.print(formatWhyText(explanation, computeSensitivity(board, path), reader));
    return tellState(plan, { reader, terminal });
  },
};
