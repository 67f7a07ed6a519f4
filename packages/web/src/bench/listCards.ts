import type { Plan } from "@lapline/engine";
import { groupChecks } from "../fins/groupChecks";
import { BLANK } from "../weight/writeWeighing";
import type { BenchCard, MarkEnd } from "./BenchCard";

export type BenchStep = NonNullable<Plan["steps"]>[number];

const ENDS: readonly MarkEnd[] = ["trailing", "leading", "stand"];

/**
 * The screens of a step in the order of its work: cautions and what to have ready first; then what is cut, laid, mixed, marked
 * or sanded; the scale last.
 * @param mixed how many cups of the step's coat the record has: one that was mixed beyond the plan has its screen too
 */
export function listCards(plan: Plan, step: BenchStep, mixed = 0): readonly BenchCard[] {
  return [
    { kind: "start", id: "start" },
    ...clothCards(plan, step),
    ...resinCards(plan, step, mixed),
    ...finCards(plan, step),
    ...sandCards(plan, step),
    ...weighCards(plan, step),
  ];
}

function clothCards({ cutplan, layup }: Plan, { coat }: BenchStep): BenchCard[] {
  const pieces = (layup?.pieces ?? []).filter((piece) => coat !== null && piece.coat === coat);
  if (coat === null || pieces.length === 0) return [];
  const ids = pieces.map(({ id }) => id);
  const cuts = (cutplan?.rolls ?? []).flatMap((roll) =>
    roll.cuts
      .filter((cut) => roll.placed.some((placed) => placed.cut === cut.id && ids.includes(placed.piece)))
      .map((cut): BenchCard => ({ kind: "cut", id: `${roll.id}-${cut.id}`, roll: roll.id, cut: cut.id })),
  );
  return [...cuts, { kind: "lay", id: "lay", coat }];
}

function resinCards({ mix }: Plan, { coat: id }: BenchStep, mixed: number): BenchCard[] {
  const coat = mix?.coats.find((each) => each.id === id);
  if (id === null || coat === undefined) return [];
  const cups = Math.max(coat.cups.length, mixed, 1);
  const cards = Array.from(
    { length: cups },
    (_, number): BenchCard => ({ kind: "cup", id: `cup-${number + 1}`, coat: id, number }),
  );
  const hasClock = coat.hardenerRatio !== null && coat.hardenerRatio > 0;
  return [...cards, ...(hasClock ? [{ kind: "clock", id: "clock", coat: id } as const] : [])];
}

function finCards({ finset }: Plan, { id }: BenchStep): BenchCard[] {
  if (finset === null) return [];
  if (id === "set-leash-plug") return finset.leashPlug === null ? [] : [{ kind: "plug", id: "plug" }];
  if (id === "set-boxes")
    return groupChecks(finset.verify.checks).map((checks): BenchCard => {
      const ids = checks.map((check) => check.id);
      return { kind: "gate", id: `gate-${ids[0] ?? ""}`, checks: ids };
    });
  if (id !== "mark-fins") return [];
  const fins = [...new Set(finset.marks.map(({ fin }) => fin))];
  return fins.flatMap((fin) =>
    ENDS.map((end): BenchCard => ({ kind: "mark", id: `mark-${fin}-${end}`, fin, end })),
  );
}

function sandCards({ sanding }: Plan, { id }: BenchStep): BenchCard[] {
  const isDry = id === "sand-bottom" || id === "sand-deck";
  if (sanding === null || !(isDry || id === "wet-sand")) return [];
  const papers = sanding.grits.filter(({ wet }) => wet !== isDry);
  return [
    ...papers.map(({ grit }): BenchCard => ({ kind: "paper", id: `paper-${grit}`, grit })),
    { kind: "through", id: "through" },
  ];
}

function weighCards({ weight }: Plan, { id }: BenchStep): BenchCard[] {
  const after = id === "prep" ? BLANK : id;
  return weight?.stages.some((stage) => stage.id === after) === true
    ? [{ kind: "weigh", id: "weigh", after }]
    : [];
}
