import { type BoardFile, LARGEST_BOARD_FILE_BYTES } from "@lapline/contract";
import type { Phrase } from "@lapline/engine";
import type { Planner } from "../plan/Planner";

/** One thing that is wrong with a file: where, what was read there, what would be right. */
export interface FileFault {
  readonly place: string;
  /** Of a board file, from 1, where it is known. */
  readonly line: number | null;
  readonly read: string;
  readonly says: Phrase;
}

export type GivenFile =
  | { readonly kind: "board"; readonly text: string; readonly file: BoardFile }
  /** A table of readings, put into the board that it was given for. */
  | { readonly kind: "survey"; readonly file: BoardFile }
  | { readonly kind: "too-large" }
  | {
      readonly kind: "faults";
      readonly faults: readonly FileFault[];
      /** The board's name where it has one, to begin with. */
      readonly name: string | null;
    };

interface Given {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

/** Reads a board file, or a table of readings into the board that is begun; says all that is wrong at once. Throws only where nothing can be planned at all. */
export async function readGivenFile(
  given: Given,
  begun: BoardFile,
  planner: Pick<Planner, "plan">,
): Promise<GivenFile> {
  if (given.size > LARGEST_BOARD_FILE_BYTES) return { kind: "too-large" };
  const text = await given.text();
  if (/\.csv$/i.test(given.name)) return readTable(text, begun);
  const read = await planner.plan(text);
  if (read.ok) return { kind: "board", text, file: read.file };
  const faults = read.problems.map(({ path, read: found, says, line }) => ({
    place: path,
    line: line ?? null,
    read: found,
    says,
  }));
  return { kind: "faults", faults, name: nameIn(text) };
}

async function readTable(text: string, begun: BoardFile): Promise<GivenFile> {
  // Only here: few boards come as a table.
  const { parseSurveyCsv } = await import("@lapline/contract/csv");
  const read = parseSurveyCsv(text, begun);
  if (read.ok) return { kind: "survey", file: read.file };
  const faults = read.problems.map(({ row, column, read: found, says }) => ({
    place: [row, column].filter((part) => part !== null).join(", "),
    line: null,
    read: found,
    says,
  }));
  return { kind: "faults", faults, name: null };
}

function nameIn(text: string): string | null {
  try {
    const document: unknown = JSON.parse(text);
    const name =
      typeof document === "object" && document !== null && "name" in document ? document.name : null;
    return typeof name === "string" && name.trim() !== "" ? name.trim() : null;
  } catch {
    return null;
  }
}
