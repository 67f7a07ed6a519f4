import type { Phrase } from "@lapline/engine";
import { useId } from "react";
import { Said } from "../shared/Said";

interface TypedFieldProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly problem?: Phrase | undefined;
  /** For digits, where the keys are on the screen. */
  readonly inputMode?: "decimal" | undefined;
  onType(text: string): void;
}

/** A name, or a quantity with its unit, as it is typed. */
export function TypedField({ label, value = "", problem, inputMode, onType }: TypedFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode={inputMode}
        autoComplete="off"
        spellCheck={false}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-note`}
        onChange={(event) => onType(event.target.value)}
      />
      {problem !== undefined && (
        <p id={`${id}-note`} className="field-problem" role="status">
          <Said says={problem} />
        </p>
      )}
    </div>
  );
}
