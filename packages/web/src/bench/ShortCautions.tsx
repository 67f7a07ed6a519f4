import { cautionHarm, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { isGeneral } from "./isGeneral";
import type { BenchStep } from "./listCards";

interface ShortCautionsProps {
  readonly step: BenchStep;
  /** To where they stand in full. */
  open(): void;
}

/** What can hurt at this step, in a few words each, on every screen of it; a touch leads to what to do about it. */
export function ShortCautions({ step, open }: ShortCautionsProps) {
  const t = useTell();
  const { reader } = useSettings();
  const harms = step.cautions
    .filter((caution) => !isGeneral(caution))
    .map((caution) => `${cautionHarm(tellText(caution, reader))}.`);
  if (harms.length === 0) return null;
  return (
    <button type="button" className="short-cautions" onClick={open}>
      {harms.join(" ")} <u>{t`What to do`}</u>
    </button>
  );
}
