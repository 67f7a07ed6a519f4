import type { BoardFile, RecordEntryFile } from "@lapline/contract";
import { mergeFiles } from "./mergeFiles";

/** One field in which two versions differ; undefined where a version does not have it. */
export interface Difference {
  readonly path: string;
  readonly from: unknown;
  readonly to: unknown;
}

export interface Differences {
  readonly fields: readonly Difference[];
  /** Entries of the record that only the one or only the other has. */
  readonly fewer: readonly RecordEntryFile[];
  readonly more: readonly RecordEntryFile[];
}

/** Field by field, how one version became another; stations and fins are followed by what they are known by. */
export function listDifferences(from: BoardFile, to: BoardFile): Differences {
  const fields: Difference[] = [];
  mergeFiles({ base: from, mine: to, theirs: from }, (_, { mine, theirs }, path) => {
    if (path !== "record") fields.push({ path, from: theirs, to: mine });
    return mine;
  });
  return { fields, fewer: onlyIn(from, to), more: onlyIn(to, from) };
}

function onlyIn(one: BoardFile, other: BoardFile): readonly RecordEntryFile[] {
  const known = new Set(other.record?.map(({ id }) => id));
  return (one.record ?? []).filter(({ id }) => !known.has(id));
}
