import type { WriteCondition } from "@lapline/store";
import { problem } from "./problem";

/** What the request says must hold: If-None-Match: *, or If-Match with one revision. */
export function conditionOf(headers: Headers): WriteCondition | undefined {
  if (headers.get("if-none-match") === "*") return { ifAbsent: true };
  const match = headers.get("if-match");
  return match === null ? undefined : { ifRevision: match.replace(/^"|"$/g, "") };
}

/** The answer to a change that does not say what it was made on. `what` begins the sentence: "The board 5-10-quad". */
export function revisionNeeded(what: string): Response {
  const detail = `${what} is there already. Read it, and send its ETag as If-Match with the change, so that no other change is lost.`;
  return problem({ status: 428, title: "Say which version was changed", detail });
}
