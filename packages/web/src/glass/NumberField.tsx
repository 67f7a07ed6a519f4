import type { Phrase } from "@lapline/engine";
import { useState } from "react";
import { TypedField } from "./TypedField";

interface NumberFieldProps {
  readonly label: string;
  readonly value: unknown;
  readonly problem?: Phrase | undefined;
  /** Undefined for an empty field; what is no number is handed on as it was typed, for the contract to refuse. */
  onType(value: number | string | undefined): void;
}

/** A bare number, such as a price; the decimal comma is read too. */
export function NumberField({ label, value, problem, onType }: NumberFieldProps) {
  const [typed, setTyped] = useState("");
  // What is typed stands as long as it says what the file holds: "9." is on its way to 9.5.
  const shown = readNumber(typed) === value ? typed : value === undefined ? "" : String(value);
  return (
    <TypedField
      label={label}
      value={shown}
      problem={problem}
      inputMode="decimal"
      onType={(text) => {
        setTyped(text);
        onType(readNumber(text));
      }}
    />
  );
}

function readNumber(text: string): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  const value = Number(trimmed.replace(",", "."));
  return Number.isFinite(value) ? value : trimmed;
}
