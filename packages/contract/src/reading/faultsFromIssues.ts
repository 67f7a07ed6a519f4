import { say } from "@lapline/engine";
import type { z } from "zod/mini";
import { BETWEEN_FIELDS } from "../schema/fields";
import type { Fault, Step } from "./Fault";
import { issueSays } from "./issueSays";

/** What the schema has against a document, one fault for each field. */
export function faultsFromIssues(issues: readonly z.core.$ZodIssue[], before: readonly Step[] = []): Fault[] {
  return issues.flatMap((issue): Fault[] => {
    const steps = [...before, ...issue.path.map(toStep)];
    if (issue.code === "unrecognized_keys") {
      const sentences = issue.message.split(BETWEEN_FIELDS);
      return issue.keys.map((key, i) => {
        const sentence = sentences[i];
        return {
          steps: [...steps, key],
          says: sentence === undefined ? say`unknown field` : issueSays(sentence),
        };
      });
    }
    if (issue.code === "invalid_union") return faultsFromUnion(issue, steps);
    if (issue.code === "invalid_key")
      return [{ steps, says: issueSays(issue.issues[0]?.message ?? issue.message) }];
    return [{ steps, says: issueSays(issue.message) }];
  });
}

/** Where one branch of a union takes this type of value, what that branch has against it says more than the union. */
function faultsFromUnion(issue: z.core.$ZodIssueInvalidUnion, steps: readonly Step[]): Fault[] {
  const fitting = issue.errors.filter((errors) => !errors.some(isWrongType));
  const [only] = fitting;
  if (fitting.length === 1 && only !== undefined) return faultsFromIssues(only, steps);
  return [{ steps, says: issueSays(issue.message) }];
}

const isWrongType = (issue: z.core.$ZodIssue): boolean =>
  issue.path.length === 0 && (issue.code === "invalid_type" || issue.code === "invalid_union");

const toStep = (key: PropertyKey): Step => (typeof key === "number" ? key : String(key));
