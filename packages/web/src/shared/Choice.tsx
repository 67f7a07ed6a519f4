import { tellText } from "@lapline/present";
import { useId } from "react";

import { useSettings } from "../settings/Settings";

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly T[];
  /** What a choice is called, where its own name says too little. */
  readonly names?: Partial<Readonly<Record<T, string>>>;
  choose(value: T): void;
}

/** A field with a few fixed answers. */
export function Choice<T extends string>({ label, value, choices, names = {}, choose }: ChoiceProps<T>) {
  const { reader } = useSettings();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = choices.find((each) => each === event.target.value);
          if (chosen !== undefined) choose(chosen);
        }}
      >
        {choices.map((each) => (
          <option key={each} value={each}>
            {names[each] ?? tellText(each, reader).replaceAll("-", " ")}
          </option>
        ))}
      </select>
    </div>
  );
}
