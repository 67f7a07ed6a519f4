import type { Plan } from "@lapline/engine";
import type { SheetContext } from "../SheetContext";

type Need = NonNullable<Plan["steps"]>[number]["needs"][number];

/**
 * When what follows a step may begin, counted from the hands being off: each stage that a later step waits for, the longest
 * wait of each, soonest first; for a step that is nothing but a wait, how long.
 */
export function waitTexts(id: string, context: SheetContext): readonly string[] {
  const { plan, ledger, t } = context;
  const longest = new Map<Need["until"], { readonly waitS: number; readonly path: string }>();
  for (const later of plan.steps ?? []) {
    for (const { step, until, waitS } of later.needs) {
      if (step !== id || until === "hands-off" || waitS === null) continue;
      if (waitS > (longest.get(until)?.waitS ?? 0)) {
        longest.set(until, { waitS, path: `steps[${later.id}].needs[${id}].waitS` });
      }
    }
  }
  const words: Readonly<Record<Need["until"], (time: string) => string>> = {
    "hands-off": () => "",
    dry: (time) => t`dry after ${time}`,
    trim: (time) => t`trim after ${time}`,
    flip: (time) => t`flip after ${time}`,
    recoat: (time) => t`recoat after ${time}`,
    sandable: (time) => t`sand after ${time}`,
  };
  const waits = [...longest].toSorted(([, a], [, b]) => a.waitS - b.waitS);
  if (waits.length > 0) return waits.map(([until, { path }]) => words[until](ledger.show(path)));
  const own = plan.steps?.find((step) => step.id === id)?.waitS ?? 0;
  return own > 0 ? [t`then wait ${ledger.show(`steps[${id}].waitS`)}`] : [];
}
