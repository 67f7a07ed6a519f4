import { say } from "../../foundation/phrase";
import { quoteText } from "../../foundation/quoteText";
import { type Finding, finding } from "../../foundation/stage";
import type { BoxTiming } from "../FinsInput";
import { usualSurface } from "./usualSurface";
import type { VerifyCheck } from "./VerifyCheck";
import type { VerifyInput } from "./VerifyInput";
import type { VerifyPlan } from "./VerifyPlan";

export interface Told {
  readonly plan: VerifyPlan;
  readonly checks: readonly VerifyCheck[];
  readonly input: VerifyInput;
  readonly boxes: BoxTiming;
}

/** Says what the readings come to: what is out with its cure, what cannot be confirmed, and whether to go. */
export function tellVerify({ plan, checks, input, boxes }: Told): readonly Finding[] {
  return [
    ...checks.flatMap(({ plan: { id }, says }) =>
      says === null ? [] : [finding("warning", "finset.verify-out", `finset.verify.checks[${id}]`, says)],
    ),
    ...checks.flatMap((check) => tellStale(check)),
    ...tellSurface(input, boxes),
    ...tellConfirmed(plan, input),
    tellVerdict(plan, boxes),
  ];
}

function tellStale({ plan: { id, title, fin }, stale }: VerifyCheck): readonly Finding[] {
  if (stale === null) return [];
  const says = say`${title}, ${fin ?? ""}: ${stale}`;
  return [finding("warning", "finset.verify-stale", `finset.verify.checks[${id}]`, says)];
}

function tellSurface({ on }: VerifyInput, boxes: BoxTiming): readonly Finding[] {
  const usual = usualSurface(boxes);
  if (on === undefined || on === usual) return [];
  const says = say`the depth stops are set from the ${on}, and with "boxes": "${boxes}" the router stands on the ${usual}: set them from the surface that will be there`;
  return [finding("warning", "finset.verify-surface", "fins.verify.on", says)];
}

function tellConfirmed({ checks }: VerifyPlan, { confirmed = [] }: VerifyInput): readonly Finding[] {
  return confirmed.flatMap(({ check: id }, i) => {
    const check = checks.find((one) => one.id === id);
    if (check?.kind === "check") return [];
    const says =
      check === undefined
        ? say`${quoteText(id)} is confirmed, and this set has no such check`
        : say`${quoteText(id)} is read, not confirmed: give its figure`;
    return [finding("warning", "finset.verify-unknown", `fins.verify.confirmed[${i}]`, says)];
  });
}

/** Fins that are glassed on see no router: what waits for the checks is the glass. */
const WORDS = {
  cut: { notYet: "no cut yet", before: "before the router" },
  glass: { notYet: "no glass yet", before: "before the fins are glassed on" },
} as const;

function tellVerdict({ verdict, next, checks }: VerifyPlan, boxes: BoxTiming): Finding {
  const path = "finset.verify";
  const { notYet, before } = WORDS[boxes === "glassed-on" ? "glass" : "cut"];
  const waiting = checks.filter(({ state, required }) => required && state === "open").length;
  const out = checks.filter(({ state }) => state === "out").length;
  switch (verdict) {
    case "go":
      return finding("note", "finset.verify-go", path, say`every check ${before} is good: go`);
    case "blocked": {
      const says = say`${notYet}: the blockers of the fins come first`;
      return finding("warning", "finset.verify-blocked", path, says);
    }
    case "correct": {
      const says = say`${notYet}: ${out} of the checks ${before} ${out === 1 ? "is" : "are"} out, first ${next ?? ""}`;
      return finding("warning", "finset.verify-stop", path, says);
    }
    case "open": {
      const says = say`${notYet}: ${waiting} of the checks ${before} ${waiting === 1 ? "is" : "are"} still to be made, first ${next ?? ""}`;
      return finding("note", "finset.verify-open", path, says);
    }
  }
}
