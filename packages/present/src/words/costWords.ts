import { count, length, mass, type Plan, type Quantity, volume } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";

type Cost = NonNullable<Plan["cost"]>;
type CostLine = Cost["lines"][number];

/** One material's line as a reader sees it; a dash where there is no price. */
export interface CostWords {
  readonly id: string;
  readonly name: string;
  readonly takes: string;
  readonly wasted: string;
  readonly buy: string;
  readonly left: string;
  readonly cost: string;
}

const HARDENER = /-hardener$/;

/** Every line of the cost in words. */
export function costWords({ lines }: Cost, reader: Reader): readonly CostWords[] {
  const t = tell(reader);
  return lines.map((line) => {
    const { onBoard, wasted, pack, left, make } = readAmounts(line);
    const show = (value: number | null): string => (value === null ? "-" : showQuantity(make(value), reader));
    const isPriced = line.cost !== null;
    return {
      id: line.id,
      name: HARDENER.test(line.id)
        ? t`${tellText(line.id.replace(HARDENER, ""), reader)} hardener`
        : tellText(line.id, reader),
      takes: show(onBoard + wasted),
      wasted: wasted === 0 ? "-" : show(wasted),
      buy: isPriced ? sayBuy(line, { show, pack, taken: onBoard + wasted }, reader) : "-",
      left: isPriced && left !== 0 ? show(left) : "-",
      cost: isPriced ? showQuantity(count(line.cost ?? 0), reader) : t`no price`,
    };
  });
}

/** The total, what it leaves out, and nothing where there is no price at all. */
export function costSentences(
  { materials, toBuy, unpriced, lines }: Cost,
  reader: Reader,
): readonly string[] {
  const t = tell(reader);
  if (unpriced.length === lines.length) return [];
  return [
    t`${count(materials)} for this board, waste with it; ${count(toBuy)} in whole packs, in your own money.`,
    ...(unpriced.length === 0
      ? []
      : [t`Left out, without a price: ${unpriced.map((id) => tellText(id, reader)).join(", ")}.`]),
  ];
}

function sayBuy(
  { packs }: CostLine,
  of: {
    readonly show: (value: number | null) => string;
    readonly pack: number | null;
    readonly taken: number;
  },
  reader: Reader,
): string {
  const t = tell(reader);
  if (packs === null || of.pack === null) return t`${of.show(of.taken)} cut to length`;
  return of.pack === 1 ? String(packs) : t`${packs} of ${of.show(of.pack)}`;
}

function readAmounts({ mass: kg, length: m, volume: m3, pieces }: CostLine): {
  readonly onBoard: number;
  readonly wasted: number;
  readonly pack: number | null;
  readonly left: number | null;
  readonly make: (value: number) => Quantity;
} {
  if (kg !== null)
    return { onBoard: kg.onBoardKg, wasted: kg.wastedKg, pack: kg.packKg, left: kg.leftKg, make: mass };
  if (m !== null)
    return { onBoard: m.onBoardM, wasted: m.wastedM, pack: m.packM, left: m.leftM, make: (v) => length(v) };
  if (m3 !== null)
    return { onBoard: m3.onBoardM3, wasted: m3.wastedM3, pack: m3.packM3, left: m3.leftM3, make: volume };
  return {
    onBoard: pieces?.onBoardCount ?? 0,
    wasted: 0,
    pack: pieces?.packCount ?? null,
    left: pieces?.leftCount ?? null,
    make: count,
  };
}
