import { useId, useState } from "react";

interface NumberFieldProps {
  readonly label: string;
  readonly value: unknown;
  readonly problem?: string | undefined;
  /** Undefined for an empty field; what is no number is handed on as it was typed, for the contract to refuse. */
  onType(value: number | string | undefined): void;
}

/** A bare number, such as a price; the decimal comma is read too. */
export function NumberField({ label, value, problem, onType }: NumberFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState("");
  // What is typed stands as long as it says what the file holds: "9." is on its way to 9.5.
  const shown = readNumber(typed) === value ? typed : value === undefined ? "" : String(value);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={shown}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-note`}
        onChange={(event) => {
          setTyped(event.target.value);
          onType(readNumber(event.target.value));
        }}
      />
      {problem !== undefined && (
        <p id={`${id}-note`} className="field-problem" role="status">
          {problem}
        </p>
      )}
    </div>
  );
}

function readNumber(text: string): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  const value = Number(trimmed.replace(",", "."));
  return Number.isFinite(value) ? value : trimmed;
}
