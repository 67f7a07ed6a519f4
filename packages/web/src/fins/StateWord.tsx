import type { VerifyCheck } from "./FinsForm";

/** Where a check stands, in a word. */
export function StateWord({ check: { state, required } }: { check: VerifyCheck }) {
  return <span className="state">{state === "open" && !required ? "if wanted" : state}</span>;
}
