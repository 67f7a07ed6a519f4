import type { Plan } from "@lapline/engine";
import { type Reader, tell, tellPhrase } from "@lapline/present";
import type { Terminal } from "../Terminal";

/** Says what is not there while the plan's blockers stand in the way, and which they are. */
export function tellBlockers(
  what: string,
  { plan, reader }: { readonly plan: Plan; readonly reader: Reader },
  terminal: Terminal,
): void {
  const t = tell(reader);
  const blockers = plan.findings.filter(({ severity }) => severity === "blocker");
  terminal.tell(
    [
      t`${what} while these stand in the way; nothing was written.`,
      ...blockers.map(({ path, says }) => `  ${path}: ${tellPhrase(says, reader)}`),
    ].join("\n"),
  );
}
