import type { VerifyCheck } from "./FinsForm";

/** Checks of one kind that follow one another, together; and those of the whole board that are only seen. */
export function groupChecks(checks: readonly VerifyCheck[]): ReadonlyArray<readonly VerifyCheck[]> {
  const groups: VerifyCheck[][] = [];
  for (const check of checks) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && belongTogether(last[0], check)) last.push(check);
    else groups.push([check]);
  }
  return groups;
}

function belongTogether(a: VerifyCheck, b: VerifyCheck): boolean {
  const isSeen = ({ kind, fin }: VerifyCheck) => kind === "check" && fin === null;
  return a.matter === b.matter || (isSeen(a) && isSeen(b));
}
