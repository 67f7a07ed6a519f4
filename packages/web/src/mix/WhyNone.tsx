import type { Finding, Plan } from "@lapline/engine";
import { tell } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";

type MixCoat = NonNullable<Plan["mix"]>["coats"][number];

/** Why no cup of the coat can be mixed, beside its crossed cup. */
export function WhyNone({ coat, findings }: { coat: MixCoat; findings: readonly Finding[] }) {
  const { reader } = useSettings();
  const why = findings.find(
    ({ severity, code, path }) =>
      severity === "blocker" &&
      (path.startsWith(`mix.coats[${coat.id}]`) || code === "mix.too-cold" || code === "mix.gel-points"),
  );
  const t = tell(reader);
  return why === undefined ? <p>{t`No cup can be mixed as things are.`}</p> : <FindingTape finding={why} />;
}
