import type { BoardEntry } from "../api/boardClient";
import { PageLink } from "../shared/PageLink";

/** The boards by name, each in the place where it will stand. */
export function BoardNames({ entries }: { entries: readonly BoardEntry[] }) {
  return (
    <ul className="boards">
      {entries.slice(0, FIRST_SHOWN).map((entry) => (
        <li key={entry.id}>
          <PageLink to={`/board/${entry.id}`} className="standing">
            <span className="standing-wall" />
            <span className="standing-name">{entry.name}</span>
          </PageLink>
          <span className="standing-words" />
        </li>
      ))}
    </ul>
  );
}

/** A shop with more boards is asked to search. */
export const FIRST_SHOWN = 60;
