import type { Plan } from "@lapline/engine";
import { type Reader, tell, tellPhrase } from "@lapline/present";
import { RefusedError } from "../RefusedError";

/** Says what is not there while the plan's blockers stand in the way, and which they are. Throws RefusedError. */
export function refuseBlocked(
  what: string,
  { plan, reader }: { readonly plan: Plan; readonly reader: Reader },
): never {
  const t = tell(reader);
  const blockers = plan.findings.filter(({ severity }) => severity === "blocker");
  throw new RefusedError(
    [
      t`${what} while these stand in the way; nothing was written.`,
      ...blockers.map(({ path, says }) => `  ${path}: ${tellPhrase(says, reader)}`),
    ].join("\n"),
  );
}
