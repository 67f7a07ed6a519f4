import { listPhrases } from "../../foundation/listPhrases";
import { type Phrase, say } from "../../foundation/phrase";
import { fraction, mass } from "../../foundation/quantity";
import { type Finding, finding } from "../../foundation/stage";
import type { Difference } from "./Difference";
import type { WeighinPlan } from "./WeighinsPlan";

/** What a builder should know of one weighing: contradictions first, then what bounds it. One finding of a kind at most. */
export function checkWeighin(entry: WeighinPlan, difference: Difference): Finding[] {
  const at = (severity: Finding["severity"], code: string, says: Phrase) =>
    finding(severity, `weighins.${code}`, `record[${entry.id}]`, says);
  const wrong = sayContradiction(entry, difference);
  if (wrong !== null) return [at("warning", wrong.code, wrong.says)];
  const bounds = sayBounds(entry, difference);
  return [
    ...bounds.map(({ code, says }) => at("note", code, says)),
    ...(bounds.length === 0 ? sayOff(entry, difference).map((says) => at("note", "off-plan", says)) : []),
  ];
}

/** The first weighing has nothing before it but the plan, and a scale or unit that is wrong shows there. */
export function checkFirstWeighing(
  { id, after, massKg }: Pick<WeighinPlan, "id" | "after" | "massKg">,
  planned: { readonly massKg: number; readonly massLowKg: number; readonly massHighKg: number },
): Finding[] {
  const spreadKg = planned.massHighKg - planned.massLowKg;
  if (massKg >= planned.massLowKg - spreadKg && massKg <= planned.massHighKg + spreadKg) return [];
  const says = say`${mass(massKg)} on the scale after ${after}, where the plan has ${mass(planned.massKg)} (${mass(planned.massLowKg)} to ${mass(planned.massHighKg)}): look at scale, unit and step, or weigh the shaped blank and write it down`;
  return [finding("warning", "weighins.far-off", `record[${id}]`, says)];
}

interface Told {
  readonly code: string;
  readonly says: Phrase;
}

function sayContradiction(entry: WeighinPlan, difference: Difference): Told | null {
  const { coats, gainedKg, gainedLowKg, gainedHighKg, keptKg, keptLowKg, mixedKg, after } = entry;
  if (gainedKg === null || gainedLowKg === null || gainedHighKg === null) return null;
  if (coats.length === 0) {
    if (gainedLowKg <= 0 || difference.worked.some((id) => id.startsWith("repair-"))) return null;
    const says = say`${mass(gainedKg)} heavier after ${after}, and no coat was laid since ${difference.from.after}: one of the two weighings is wrong, or stands at the wrong step`;
    return { code: "gained-without-coat", says };
  }
  if (gainedHighKg <= 0) {
    const says = say`${mass(-gainedKg)} lighter after ${after}, with ${listNames(coats)} laid since ${difference.from.after}: one of the two weighings is wrong, or much was sanded or cut off`;
    return { code: "lighter", says };
  }
  if (keptKg === null && !coats.some((id) => id === "boxes" || id === "leash-plug")) {
    const says = say`${mass(gainedKg)} gained by ${after}, less than its cloth alone weighs, ${mass(difference.clothKg)}: one of the two weighings is wrong, or something was cut off`;
    return { code: "less-than-cloth", says };
  }
  if (mixedKg !== null && keptKg !== null && keptLowKg !== null && keptLowKg > mixedKg) {
    const says = say`${mass(keptKg)} of resin on the board after ${after}, and only ${mass(mixedKg)} in the record's cups: a cup is missing from the record, or a weighing is wrong`;
    return { code: "more-than-mixed", says };
  }
  return null;
}

function sayBounds({ coats, after }: WeighinPlan, { worked, untrimmed }: Difference): Told[] {
  const told: Told[] = [];
  if (coats.length > 1) {
    const says = say`${coats.length} coats in one difference, up to ${after}: weigh after each to tell them apart`;
    told.push({ code: "several", says });
  }
  if (untrimmed !== null) {
    const says = say`weighed before the cloth of ${untrimmed} was trimmed: what hangs over is in it; weigh again after the trimming`;
    told.push({ code: "untrimmed", says });
  }
  if (coats.length > 0 && worked.length > 0) {
    const says = say`between the weighings stands ${listNames(worked)} too: what that took off or put on is in the difference`;
    told.push({ code: "worked-between", says });
  }
  return told;
}

/** Resin outside the band that the plan has for it. */
function sayOff(entry: WeighinPlan, { coats }: Difference): Phrase[] {
  const { keptKg, plannedKeptKg, keptRatio, after } = entry;
  if (keptKg === null || plannedKeptKg === null || keptRatio === null) return [];
  const lowKg = coats.reduce((sumKg, coat) => sumKg + coat.keptMassLowKg, 0);
  const highKg = coats.reduce((sumKg, coat) => sumKg + coat.keptMassHighKg, 0);
  if (keptKg >= lowKg && keptKg <= highKg) return [];
  return [
    say`${mass(keptKg)} of resin stayed on by ${after}, ${fraction(keptRatio)} of the plan's ${mass(plannedKeptKg)} (${mass(lowKg)} to ${mass(highKg)}): the coats to come are reckoned beside it, the plan is left as it is`,
  ];
}

function listNames(ids: readonly string[]): Phrase {
  return listPhrases(
    ids.map((id) => say`${id}`),
    "comma",
  );
}
