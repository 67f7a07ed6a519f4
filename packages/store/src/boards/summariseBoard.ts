import type { FileRead } from "./readOnce";

/** A board in the list, in the maker's own words: enough to know it by without working out its plan. */
interface BoardSummary {
  readonly id: string;
  readonly revision: string;
  readonly name: string;
  readonly rider: string | null;
  readonly length: string | null;
  readonly tail: string | null;
  readonly fins: string | null;
  /** Whether the file can be read as a board; one edited by hand may not be. */
  readonly readable: boolean;
}

export function summariseBoard(
  named: { readonly id: string; readonly revision: string },
  read: FileRead,
): BoardSummary {
  if (!read.ok)
    return { ...named, name: named.id, rider: null, length: null, tail: null, fins: null, readable: false };
  const { file } = read;
  return {
    ...named,
    name: file.name,
    rider: file.order?.rider ?? null,
    length: file.survey.length,
    tail: file.survey.tail.kind,
    fins: file.fins?.arrangement ?? null,
    readable: true,
  };
}
