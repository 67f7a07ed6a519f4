import type { Plan } from "@lapline/engine";
import { asSentence } from "@lapline/present";

/** What nobody gave and the plan took, each with where it is from. */
export function AssumedPart({ plan }: { plan: Plan }) {
  const { assumptions } = plan;
  if (assumptions.length === 0) return null;
  return (
    <details className="assumed">
      <summary>What was assumed ({assumptions.length})</summary>
      <ul>
        {assumptions.map((assumption, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two assumptions may concern one place
          <li key={`${assumption.path} ${i}`}>
            <b>{assumption.value}</b> <span className="quiet">{assumption.path}</span>
            <br />
            {asSentence(assumption.why)} <span className="quiet">{assumption.source}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
