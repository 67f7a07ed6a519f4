import type { BoardEntry } from "../api/boardClient";
import { PageLink } from "../shared/PageLink";

/** The boards by name, each in the place where it will stand. */
export function BoardNames({ entries }: { entries: readonly BoardEntry[] }) {
  return (
    <ul className="boards">
      {entries.map((entry) => (
        <li key={entry.id}>
          <PageLink to={`/board/${entry.id}`} className="standing">
            <span className="standing-wall" />
            <span className="standing-name">{entry.name}</span>
          </PageLink>
        </li>
      ))}
    </ul>
  );
}
