import { useId } from "react";

interface WhenFieldProps {
  readonly label: string;
  /** Local wall time, `2026-04-11T09:00`. */
  readonly value: string;
  onPick(value: string): void;
}

/** When something happened, by the shop's clock. */
export function WhenField({ label, value, onPick }: WhenFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="datetime-local" value={value} onChange={(event) => onPick(event.target.value)} />
    </div>
  );
}
