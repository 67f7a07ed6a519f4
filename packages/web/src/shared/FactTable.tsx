import type { ReactNode } from "react";

interface FactTableProps {
  readonly caption: string;
  readonly captionUnseen?: boolean;
  /** The first is of the rows' names. */
  readonly heads: readonly string[];
  readonly rows: readonly FactRow[];
  /** Whether its figures are marked off with a tape: then they stand as large as in the marks' own table. */
  readonly isToMark?: boolean;
}

export interface FactRow {
  readonly id: string;
  readonly name: ReactNode;
  readonly cells: readonly ReactNode[];
  /** Class of the row, for a state that it is in. */
  readonly state?: string;
}

/** A table that on a phone becomes one small block for each row, every figure under its own name. */
export function FactTable({ caption, captionUnseen = false, heads, rows, isToMark = false }: FactTableProps) {
  const [first = "", ...others] = heads;
  return (
    <table className={isToMark ? "facts marks" : "facts"}>
      <caption className={captionUnseen ? "unseen" : undefined}>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{first}</th>
          {others.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, name, cells, state }) => (
          <tr key={id} className={state}>
            <th scope="row">{name}</th>
            {cells.map((cell, i) => (
              <td key={others[i]} data-name={others[i]}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
