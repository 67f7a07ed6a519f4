import { cautionWords, tellText } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { findAsSet } from "./asSetReadings";
import type { Finset, FinsForm, VerifyCheck } from "./FinsForm";
import { findingsAt, isWithin } from "./findingsAt";
import { GateGroup } from "./GateGroup";
import { GateVerdict } from "./GateVerdict";

const SURFACES = ["foam", "laminate", "fill"] as const;

/** Mark and verify: the stop before the router, one check after the other, each under the thumb. */
export function GateView({ form, finset }: { form: FinsForm; finset: Finset }) {
  const { reader } = useSettings();
  const t = useTell();
  const { fins, plan, edit } = form;
  const { verify } = finset;
  const shown = finset.marks.map((mark) => `fins.asSet[${findAsSet(fins.asSet, mark)}]`);
  // What is out is said at its own check, and the verdict at the foot.
  const loose = [...findingsAt(plan, "fins.verify"), ...findingsAt(plan, "fins.asSet")].filter(
    ({ path }) => !shown.some((place) => isWithin(path, place)),
  );
  return (
    <section className="gate" aria-labelledby="gate-name">
      <h3 id="gate-name">{t`Mark and verify`}</h3>
      <ul className="cautions">
        {cautionWords(verify.cautions).map((caution) => (
          <li key={caution}>{tellText(caution, reader)}</li>
        ))}
      </ul>
      {loose.map((finding, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings may share code and place
        <FindingTape key={`${finding.code} ${i}`} finding={finding} />
      ))}
      <div className="fields">
        <Choice
          label={t`the surface that is there`}
          value={verify.surface}
          choices={SURFACES}
          names={{ fill: t`fill coat` }}
          choose={(surface) => edit(["fins", "verify", "on"], surface)}
        />
      </div>
      <ol className="gate-list">
        {groupChecks(verify.checks).map((checks) => (
          <GateGroup key={checks[0]?.id} form={form} finset={finset} checks={checks} />
        ))}
      </ol>
      <GateVerdict form={form} verify={verify} />
    </section>
  );
}

/** Checks of one kind that follow one another, together; and those of the whole board that are only seen. */
function groupChecks(checks: readonly VerifyCheck[]): ReadonlyArray<readonly VerifyCheck[]> {
  const groups: VerifyCheck[][] = [];
  for (const check of checks) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && belongTogether(last[0], check)) last.push(check);
    else groups.push([check]);
  }
  return groups;
}

function belongTogether(a: VerifyCheck, b: VerifyCheck): boolean {
  const isSeen = ({ kind, fin }: VerifyCheck) => kind === "check" && fin === null;
  return a.matter === b.matter || (isSeen(a) && isSeen(b));
}
