import type { Phrase } from "@lapline/engine";
import { type ReactNode, useState } from "react";
import { QuantityField } from "../board/QuantityField";
import { useTell } from "../settings/useTell";

interface NoteFormProps {
  readonly className: string;
  /** Read aloud, where the field's own label does not say enough. */
  readonly name?: string;
  readonly label: string;
  readonly dimension: "mass" | "film";
  /** What stands above the field: what the reading is of. */
  readonly children: ReactNode;
  /** What is wrong with what is typed; said once it was to be written down. */
  problemOf(text: string): Phrase | undefined;
  /** Takes a reading that is right, as it was typed. */
  write(text: string): void;
}

/** One reading that is written down. */
export function NoteForm({ className, name, label, dimension, children, problemOf, write }: NoteFormProps) {
  const t = useTell();
  const [text, setText] = useState("");
  const [isAsked, setAsked] = useState(false);
  const problem = problemOf(text);
  return (
    <form
      className={className}
      aria-label={name}
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (problem !== undefined) return;
        write(text.trim());
        setText("");
        setAsked(false);
      }}
    >
      {children}
      <QuantityField
        label={label}
        value={text}
        dimension={dimension}
        problem={isAsked ? problem : undefined}
        onType={setText}
      />
      <button type="submit">{t`Write it down`}</button>
    </form>
  );
}
