import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import type { GlossaryPart } from "./readGlossary";

/** Words, each with the line that says what is meant by it. */
export function WordList({ part: { entries } }: { part: GlossaryPart }) {
  const { reader } = useSettings();
  return (
    <dl className="words">
      {entries.map(({ word, means }) => (
        <div key={word}>
          <dt>{tellText(word, reader)}</dt>
          <dd>{tellText(means, reader)}</dd>
        </div>
      ))}
    </dl>
  );
}
