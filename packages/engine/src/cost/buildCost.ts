import { listPhrases } from "../foundation/listPhrases";
import { say } from "../foundation/phrase";
import { type Finding, finding, type Stage } from "../foundation/stage";
import { nameMaterial } from "../materials/nameMaterial";
import type { PriceInput } from "../materials/PriceInput";
import { assume } from "../sources/assume";
import type { CostBasis, CostBoard } from "./CostInput";
import type { CostLinePlan, CostPlan } from "./CostPlan";
import { listNeeds } from "./listNeeds";
import { reckonLine } from "./reckonLine";

/**
 * What the board's materials cost, line by line from the shop's prices, waste with it; what to buy in whole packs and what is left over.
 * Currency neutral: prices are numbers in the shop's own money. A line without a price is shown without one.
 * @returns null with a note where the glass is not planned; null with a blocker where a price or pack is below nought
 */
export function buildCost(board: CostBoard, basis: CostBasis): Stage<CostPlan> {
  const nothing = { value: null, findings: [], assumptions: [] };
  if (basis.layup === null) {
    const says = say`the cost waits for the glass`;
    return { ...nothing, findings: [finding("note", "cost.waits", "cost", says)] };
  }
  const wrong = checkPrices(board);
  if (wrong.length > 0) return { ...nothing, findings: wrong };
  const lines = listNeeds(board, basis).map((need) => reckonLine(need, priceOf(board, need.id)));
  const unpriced = lines.filter(({ cost }) => cost === null).map(({ id }) => id);
  const total = (of: (line: CostLinePlan) => number | null) =>
    lines.reduce((sum, line) => sum + (of(line) ?? 0), 0);
  return {
    value: { materials: total((line) => line.cost), toBuy: total((line) => line.outlay), unpriced, lines },
    findings: [...sayNoCloth(basis), ...sayUnpriced(board, lines, unpriced)],
    assumptions: listLimits(lines),
  };
}

function priceOf({ shop }: CostBoard, id: string): PriceInput | undefined {
  const prices = shop?.prices ?? {};
  if (Object.hasOwn(prices, id)) return prices[id];
  const rolls = shop?.rolls ?? {};
  const price = Object.hasOwn(rolls, id) ? rolls[id]?.price : undefined;
  return price === undefined ? undefined : { price };
}

function checkPrices({ shop }: CostBoard): Finding[] {
  return Object.entries(shop?.prices ?? {}).flatMap(([id, { price, ...amounts }]) => {
    const sizes = Object.values(amounts);
    if (price >= 0 && Number.isFinite(price) && sizes.every((size) => size > 0 && Number.isFinite(size))) {
      return [];
    }
    const says = say`a price is nought or more, and a pack, its pieces and what is used are above nought`;
    return [finding("blocker", "cost.price", `shop.prices[${id}]`, says)];
  });
}

/** Cloth is bought by the cut plan; without one no line has it, priced or not. */
function sayNoCloth({ layup, cutplan }: CostBasis): Finding[] {
  if (cutplan !== null || layup === null || layup.pieces.length === 0) return [];
  const says = say`the cloth is in no line and no total: it cannot be cut as planned, see what stops the cut plan`;
  return [finding("warning", "cost.no-cloth", "cost", says)];
}

function sayUnpriced(
  board: CostBoard,
  lines: readonly CostLinePlan[],
  unpriced: readonly string[],
): Finding[] {
  if (unpriced.length === 0) return [];
  if (unpriced.length === lines.length) {
    const says = say`no prices are given: put them into shop.prices, in your own money`;
    return [finding("note", "cost.no-prices", "shop.prices", says)];
  }
  const packless = unpriced.filter((id) => priceOf(board, id) !== undefined);
  const names = listPhrases(unpriced.map(nameMaterial), "semicolon");
  return [
    finding("note", "cost.unpriced", "shop.prices", say`the total leaves out what has no price: ${names}`),
    ...packless.map((id) =>
      finding(
        "warning",
        "cost.pack",
        `shop.prices[${id}].pack`,
        say`the price of ${nameMaterial(id)} needs its pack: resin, hardener and tint by mass or volume, wax by volume`,
      ),
    ),
  ];
}

function listLimits(lines: readonly CostLinePlan[]) {
  if (lines.every(({ cost }) => cost === null)) return [];
  const taken = say`what this board takes of a pack at the pack's price; nothing in stock`;
  const why =
    "work, rent, power, fins and shipping are left out; a tin that is not emptied is counted by what was taken";
  return [assume("cost", taken, why, "convention")];
}
