import type { Phrase } from "@lapline/engine";
import type { ReactNode } from "react";
import { QuantityField } from "../board/QuantityField";
import { useTell } from "../settings/useTell";

interface TargetFieldProps {
  /** What should be read. */
  readonly target: ReactNode;
  readonly label: string;
  readonly value: string | undefined;
  readonly dimension?: "length" | "angle";
  readonly problem: Phrase | undefined;
  onType(text: string): void;
}

/** A figure that is to be met, and under it the field for the one that was read. */
export function TargetField({ target, label, value, dimension, problem, onType }: TargetFieldProps) {
  const t = useTell();
  return (
    <div>
      <p className="target">
        <span aria-hidden="true">{label}</span>
        <b>{target}</b>
      </p>
      <QuantityField
        label={t`${label}, as read`}
        labelUnseen
        value={value}
        dimension={dimension ?? "length"}
        problem={problem}
        onType={onType}
      />
    </div>
  );
}
