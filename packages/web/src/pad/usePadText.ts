import { useState } from "react";
import { formatPad } from "./formatPad";
import { emptyPad, type PadKey, type PadValue } from "./PadValue";
import { pressKey } from "./pressKey";
import { readPad } from "./readPad";

interface Held {
  readonly value: PadValue;
  /** As it was given out; another text in the field was typed elsewhere. */
  readonly text: string;
  /** The first digit begins a new number, as the one that stands there is whole. */
  readonly isFresh: boolean;
}

/** Keys pressed into a field's text; each field, and each text that comes from elsewhere, is taken up anew. */
export function usePadText(text: string, unit: string, onType: (text: string) => void) {
  const [held, setHeld] = useState<Held>(() => takeUp(text, unit));
  const current = held.text === text ? held : takeUp(text, unit);
  const press = (key: PadKey): void => {
    const isNew = current.isFresh && key.kind !== "back" && key.kind !== "unit";
    const value = pressKey(isNew ? emptyPad(current.value.unit) : current.value, key);
    const next = formatPad(value);
    setHeld({ value, text: next, isFresh: false });
    onType(next);
  };
  return { unit: current.value.unit, press };
}

function takeUp(text: string, unit: string): Held {
  return { value: readPad(text, unit), text, isFresh: true };
}
