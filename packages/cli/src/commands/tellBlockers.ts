import { formatPhrase, type Plan, type Units } from "@lapline/engine";
import type { Terminal } from "../Terminal";

/** Says what is not there while the plan's blockers stand in the way, and which they are. */
export function tellBlockers(
  what: string,
  { plan, units }: { readonly plan: Plan; readonly units: Units },
  terminal: Terminal,
): void {
  const blockers = plan.findings.filter(({ severity }) => severity === "blocker");
  terminal.tell(
    [
      `${what} while these stand in the way; nothing was written.`,
      ...blockers.map(({ path, says }) => `  ${path}: ${formatPhrase(says, units)}`),
    ].join("\n"),
  );
}
