import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";

interface YesNoProps {
  readonly label: string;
  readonly value: boolean | undefined;
  /** What it means that nothing is said. */
  readonly unsaid: string;
  choose(value: boolean | undefined): void;
}

/** Yes, no, or not said. */
export function YesNo({ label, value, unsaid, choose }: YesNoProps) {
  const t = useTell();
  return (
    <Choice
      label={label}
      value={value === undefined ? "unsaid" : value ? "yes" : "no"}
      choices={["unsaid", "yes", "no"]}
      names={{ unsaid, yes: t`yes`, no: t`no` }}
      choose={(chosen) => choose(chosen === "unsaid" ? undefined : chosen === "yes")}
    />
  );
}
