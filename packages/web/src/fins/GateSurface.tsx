import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import type { Finset, FinsForm } from "./FinsForm";

const SURFACES = ["foam", "laminate", "fill"] as const;

/** What is measured on: the checks' targets follow it. */
export function GateSurface({ form: { edit }, verify }: { form: FinsForm; verify: Finset["verify"] }) {
  const t = useTell();
  return (
    <div className="fields">
      <Choice
        label={t`the surface that is there`}
        value={verify.surface}
        choices={SURFACES}
        names={{ fill: t`fill coat` }}
        choose={(surface) => edit(["fins", "verify", "on"], surface)}
      />
    </div>
  );
}
