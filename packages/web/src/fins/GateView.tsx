import { cautionWords, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import type { Finset, FinsForm } from "./FinsForm";
import { GateGroup } from "./GateGroup";
import { GateLoose } from "./GateLoose";
import { GateSurface } from "./GateSurface";
import { GateVerdict } from "./GateVerdict";
import { groupChecks } from "./groupChecks";

/** Mark and verify: the stop before the router, one check after the other, each under the thumb. */
export function GateView({ form, finset }: { form: FinsForm; finset: Finset }) {
  const { reader } = useSettings();
  const t = useTell();
  const { verify } = finset;
  return (
    <section className="gate" aria-labelledby="gate-name">
      <h3 id="gate-name">{t`Mark and verify`}</h3>
      <ul className="cautions">
        {cautionWords(verify.cautions).map((caution) => (
          <li key={caution}>{tellText(caution, reader)}</li>
        ))}
      </ul>
      <GateLoose form={form} finset={finset} />
      <GateSurface form={form} verify={verify} />
      <ol className="gate-list">
        {groupChecks(verify.checks).map((checks) => (
          <GateGroup key={checks[0]?.id} form={form} finset={finset} checks={checks} />
        ))}
      </ol>
      <GateVerdict form={form} verify={verify} />
    </section>
  );
}
