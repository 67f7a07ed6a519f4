import { tell, tellText } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { AsSetFields } from "./AsSetFields";
import type { Finset, FinsForm, VerifyCheck } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { GateReading } from "./GateReading";
import { GateSeen } from "./GateSeen";
import { SidesAlike } from "./SidesAlike";

interface GateGroupProps {
  readonly form: FinsForm;
  readonly finset: Finset;
  /** Of one kind. */
  readonly checks: readonly VerifyCheck[];
  /** Of its name; under the gate's own heading if left out. */
  readonly heading?: "h2" | "h4";
}

/** Checks of one kind: how it is done, said once, then each place where it is made; what is not asked for stands folded. */
export function GateGroup({ form, finset, checks, heading: Heading = "h4" }: GateGroupProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [first] = checks;
  if (first === undefined) return null;
  const isAlike = checks.every(({ how }) => how === first.how);
  const isWhole = first.kind === "check" && first.fin === null;
  const wanted = checks.filter(({ required, state }) => !required && state === "open");
  const asked = checks.filter((check) => !wanted.includes(check));
  const entries = (some: readonly VerifyCheck[]) => (
    <ul>
      {some.map((check) => (
        <GateCheck key={check.id} form={form} finset={finset} check={check} saysHow={!isAlike || isWhole} />
      ))}
    </ul>
  );
  return (
    <li>
      {!isWhole && <Heading>{tellText(first.title, reader)}</Heading>}
      {isAlike && !isWhole && <p className="how">{tellText(first.how, reader)}</p>}
      {entries(asked)}
      {wanted.length > 0 && (
        <details className="box">
          <summary>{t`${wanted.length} more if wanted, to the leading marks`}</summary>
          {entries(wanted)}
        </details>
      )}
    </li>
  );
}

interface GateCheckProps {
  readonly form: FinsForm;
  readonly finset: Finset;
  readonly check: VerifyCheck;
  readonly saysHow: boolean;
}

function GateCheck({ form, finset, check, saysHow }: GateCheckProps) {
  const { reader } = useSettings();
  const isNext = finset.verify.next === check.id;
  return (
    <li id={`gate-${check.id}`} className={`check check-${check.state}${isNext ? " check-next" : ""}`}>
      <GateEntry form={form} finset={finset} check={check} />
      {saysHow && <p className="how">{tellText(check.how, reader)}</p>}
      {findingsAt(form.plan, `finset.verify.checks[${check.id}]`).map((finding) => (
        <FindingTape key={finding.code} finding={finding} />
      ))}
    </li>
  );
}

function GateEntry({ form, finset, check }: Omit<GateCheckProps, "saysHow">) {
  if (check.kind === "check") return <GateSeen form={form} check={check} verify={finset.verify} />;
  if (check.matter === "sides") return <SidesAlike check={check} />;
  if (check.matter !== "marks") return <GateReading form={form} check={check} />;
  const mark = finset.marks.find(({ fin, side }) => fin === check.fin && side === check.side);
  return mark === undefined ? null : <AsSetFields form={form} check={check} mark={mark} />;
}
