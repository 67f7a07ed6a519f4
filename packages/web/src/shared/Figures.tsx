import type { Quantity } from "@lapline/engine";
import type { ReactNode } from "react";
import { Amount } from "./Amount";

export interface FigureEntry {
  readonly name: string;
  readonly of: Quantity | null;
  /** Its place in the plan, where it can be turned over. */
  readonly why?: string;
  /** Beneath it: its band, or where it is. */
  readonly note?: ReactNode;
  /** Of the second rank: set smaller. */
  readonly minor?: boolean;
}

/** The few numbers of a part that are acted on, large, each with its name. */
export function Figures({ entries }: { entries: readonly FigureEntry[] }) {
  return (
    <dl className="figures">
      {entries.map(({ name, of, why, note, minor = false }) => (
        <div key={name} className={minor ? "minor" : undefined}>
          <dt>{name}</dt>
          <dd>
            <Amount of={of} why={why} />
            {note !== undefined && <span className="figure-note">{note}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
