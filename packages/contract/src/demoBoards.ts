import fiveTenQuad from "../demo/five-ten-quad.json";
import nineTwoLong from "../demo/nine-two-long.json";
import sixFourTri from "../demo/six-four-tri.json";
import type { BoardFile } from "./file/BoardFile";
import { formatBoardFile } from "./formatBoardFile";

export interface DemoBoard {
  /** Small letters and hyphens; the file's name without its ending. */
  readonly id: string;
  readonly fileName: string;
  readonly file: BoardFile;
  /** The file as a person reads and edits it. */
  readonly text: string;
}

/**
 * The boards of the north shed, an invented shop of two people on a cold coast: a quad whose bottom is just laminated, a tri
 * in epoxy over EPS that is 4 mm out of true about a skewed stringer, and a long board with one half-width misread by 1 in.
 */
export const DEMO_BOARDS: readonly DemoBoard[] = [
  demoBoard("five-ten-quad", fiveTenQuad as BoardFile),
  demoBoard("six-four-tri", sixFourTri as BoardFile),
  demoBoard("nine-two-long", nineTwoLong as BoardFile),
];

function demoBoard(id: string, file: BoardFile): DemoBoard {
  return { id, fileName: `${id}.json`, file, text: formatBoardFile(file) };
}
