import type { Plan } from "@lapline/engine";
import { assumedWords } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";

/** What nobody gave and the plan took, each with where it is from. */
export function AssumedPart({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const t = useTell();
  const { assumptions } = plan;
  if (assumptions.length === 0) return null;
  return (
    <details className="assumed">
      <summary>{t`What was assumed (${assumptions.length})`}</summary>
      <ul>
        {assumptions.map((assumption, i) => {
          const { name, taken, source } = assumedWords(assumption, reader);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two assumptions may concern one place
            <li key={`${assumption.path} ${i}`}>
              <b>{name}</b>
              <br />
              <Fractions text={taken} /> <span className="quiet">{source}</span>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
