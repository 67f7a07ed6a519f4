import { say } from "../foundation/phrase";
import { count, length, mass, type Quantity, volume } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import type { CostLinePlan, CostPlan } from "./CostPlan";

/** What `why` hands the cost's working. */
export interface CostContext {
  readonly plan: { readonly cost: CostPlan | null };
}

const LINE = "cost.lines[].";

/** How each number of the cost comes about, keyed by its path in the plan. */
export const costWorking: WorkingTable<CostContext> = {
  "cost.materials": total(
    "what this board takes, waste with it, of every line with a price",
    "Σ cost",
    "cost",
  ),
  "cost.toBuy": total("whole packs of every line with a price", "Σ outlay", "outlay"),
  [`${LINE}price`]: line("price of a pack, or of a metre off the roll, in the shop's own money", "as given"),
  [`${LINE}packs`]: line("whole packs to buy", "what it takes ÷ pack, up to the next whole one"),
  [`${LINE}cost`]: line(
    "price of what this board takes, waste with it",
    "price × (on the board + wasted) ÷ pack",
  ),
  [`${LINE}outlay`]: line("price of the whole packs", "price × packs"),
  ...amounts("mass", "Kg"),
  ...amounts("length", "M"),
  ...amounts("volume", "M3"),
  ...amounts("pieces", "Count"),
};

function amounts(measure: "mass" | "length" | "volume" | "pieces", unit: string): WorkingTable<CostContext> {
  const at = `${LINE}${measure}.`;
  return {
    [`${at}onBoard${unit}`]: line("what stays on the board, or is used up", "cut plan, coats and cups"),
    [`${at}wasted${unit}`]: line(
      "cloth cut away, resin left in cup and on tools, run off, dripped or evaporated",
      "taken − on the board",
    ),
    [`${at}pack${unit}`]: line("what is in a pack; a volume of liquid by its density", "as given"),
    [`${at}bought${unit}`]: line("whole packs, or the length that is cut", "packs × pack"),
    [`${at}left${unit}`]: line("left over for another board", "bought − on the board − wasted"),
  };
}

function total(words: string, formula: string, of: "cost" | "outlay"): Working<CostContext> {
  return {
    words: say`${words}, in the shop's own money`,
    formula,
    sources: ["convention"],
    inputs: ({ plan: { cost } }) =>
      (cost?.lines ?? []).flatMap((each): WorkingInput[] => {
        const value = each[of];
        return [{ name: each.id, value: value === null ? "no price" : count(value) }];
      }),
  };
}

function line(words: string, formula: string): Working<CostContext> {
  return {
    words,
    formula,
    sources: ["mass-balance", "convention"],
    inputs: ({ plan: { cost } }, ids) => {
      const found = cost?.lines.find(({ id }) => id === ids[0]);
      return found === undefined ? [] : listAmounts(found);
    },
  };
}

function listAmounts(found: CostLinePlan): WorkingInput[] {
  const [onBoard, wasted, pack] = amountsOf(found);
  return [
    { name: "on the board", value: onBoard },
    { name: "wasted", value: wasted },
    ...(pack === null ? [] : [{ name: "pack", value: pack }]),
    ...(found.price === null ? [] : [{ name: "price", value: count(found.price) }]),
  ];
}

function amountsOf(found: CostLinePlan): [Quantity, Quantity, Quantity | null] {
  const { mass: kg, length: m, volume: m3, pieces } = found;
  const of = (make: (value: number) => Quantity, list: readonly [number, number, number | null]) =>
    [make(list[0]), make(list[1]), list[2] === null ? null : make(list[2])] as [
      Quantity,
      Quantity,
      Quantity | null,
    ];
  if (kg !== null) return of(mass, [kg.onBoardKg, kg.wastedKg, kg.packKg]);
  if (m !== null) return of(length, [m.onBoardM, m.wastedM, m.packM]);
  if (m3 !== null) return of(volume, [m3.onBoardM3, m3.wastedM3, m3.packM3]);
  return of(count, [pieces?.onBoardCount ?? 0, pieces?.wastedCount ?? 0, pieces?.packCount ?? null]);
}
