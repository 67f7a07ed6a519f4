import type { Plan } from "@lapline/engine";
import { asSentence, tell, tellText } from "@lapline/present";

import { useSettings } from "../settings/Settings";

/** What nobody gave and the plan took, each with where it is from. */
export function AssumedPart({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { assumptions } = plan;
  if (assumptions.length === 0) return null;
  return (
    <details className="assumed">
      <summary>{t`What was assumed (${assumptions.length})`}</summary>
      <ul>
        {assumptions.map((assumption, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two assumptions may concern one place
          <li key={`${assumption.path} ${i}`}>
            <b>{assumption.value}</b> <span className="quiet">{assumption.path}</span>
            <br />
            {asSentence(tellText(assumption.why, reader))} <span className="quiet">{assumption.source}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
