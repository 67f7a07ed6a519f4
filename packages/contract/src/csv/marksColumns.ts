import type { AsSetFile } from "../file/FinsFile";
import type { CsvColumn } from "./CsvColumn";

/** Where one reading of a fin as set stands in a board file. */
export interface SetColumn {
  readonly name: string;
  readonly holds: "length" | "angle";
  readonly read: (asSet: AsSetFile) => string | undefined;
  /** As the board file's paths name it, behind the fin. */
  readonly path: string;
}

export const SET_COLUMNS: readonly SetColumn[] = [
  {
    name: "set trailing from tail",
    holds: "length",
    read: ({ trailing }) => trailing?.fromTail,
    path: "trailing.fromTail",
  },
  {
    name: "set trailing from centreline",
    holds: "length",
    read: ({ trailing }) => trailing?.fromCentreline,
    path: "trailing.fromCentreline",
  },
  {
    name: "set leading from tail",
    holds: "length",
    read: ({ leading }) => leading?.fromTail,
    path: "leading.fromTail",
  },
  {
    name: "set leading from centreline",
    holds: "length",
    read: ({ leading }) => leading?.fromCentreline,
    path: "leading.fromCentreline",
  },
  { name: "set cant", holds: "angle", read: ({ cant }) => cant, path: "cant" },
];

/** Which fin, what is planned, then what was measured on it. */
export const MARKS_COLUMNS: readonly CsvColumn[] = [
  { name: "fin", holds: "words" },
  { name: "side", holds: "words" },
  { name: "planned trailing from tail", holds: "length", onlyOut: true },
  { name: "planned trailing from centreline", holds: "length", onlyOut: true },
  { name: "planned leading from tail", holds: "length", onlyOut: true },
  { name: "planned leading from centreline", holds: "length", onlyOut: true },
  { name: "planned trailing from rail", holds: "length", onlyOut: true },
  { name: "planned toe", holds: "angle", onlyOut: true },
  { name: "planned cant", holds: "angle", onlyOut: true },
  ...SET_COLUMNS.map(({ name, holds }): CsvColumn => ({ name, holds })),
  { name: "measured on", holds: "words" },
];
