import { useId } from "react";
import { Fractions } from "../shared/Fractions";

interface QuantityFieldProps {
  /** Read aloud, and shown where there is room. */
  readonly label: string;
  readonly value: string | undefined;
  /** What is wrong with what is typed. */
  readonly problem?: string | undefined;
  /** What the other readings would have here. */
  readonly suspect?: string | undefined;
  readonly labelUnseen?: boolean;
  onType(text: string): void;
}

/** A field for a length as a builder writes it; what is wrong stands beneath it. */
export function QuantityField({
  label,
  value = "",
  problem,
  suspect,
  labelUnseen,
  onType,
}: QuantityFieldProps) {
  const id = useId();
  const note = problem ?? suspect;
  return (
    <div className="field">
      <label htmlFor={id} className={labelUnseen ? "unseen" : undefined}>
        {label}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={(event) => onType(event.target.value)}
      />
      {note !== undefined && (
        <p
          id={`${id}-note`}
          className={problem === undefined ? "tape tape-warning" : "field-problem"}
          role="status"
        >
          <Fractions text={note} />
        </p>
      )}
    </div>
  );
}
