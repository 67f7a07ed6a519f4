import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import type { ChosenStep } from "./chooseStep";
import type { BenchStep } from "./listCards";
import { shortTitle } from "./shortTitle";

interface StepPickerProps {
  readonly steps: readonly BenchStep[];
  readonly chosen: ChosenStep;
  choose(id: string): void;
}

/** Which step of how many, and any other one at once. */
export function StepPicker({ steps, chosen, choose }: StepPickerProps) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <label className="bench-picker">
      <span className="unseen">{t`Step`}</span>
      <select value={chosen.step.id} onChange={(event) => choose(event.target.value)}>
        {steps.map((step, i) => (
          <option key={step.id} value={step.id}>
            {`${i + 1}/${steps.length} ${shortTitle(step, reader).name}${step.done ? ` (${t`done`})` : ""}`}
          </option>
        ))}
      </select>
    </label>
  );
}
