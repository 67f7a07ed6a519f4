import { count, length, mass, nameMaterial, type Plan, type Quantity, volume } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";

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
  /** Where each of them stands in the plan, for a number that is there. */
  readonly why: Readonly<Partial<Record<"takes" | "wasted" | "buy" | "left" | "cost", string>>>;
}

/** Every line of the cost in words. */
export function costWords({ lines }: Cost, reader: Reader): readonly CostWords[] {
  const t = tell(reader);
  return lines.map((line) => {
    const { onBoard, wasted, pack, left, make, kind, unit } = readAmounts(line);
    const at = `cost.lines[${line.id}]`;
    const amountAt = (field: string): string => `${at}.${kind}.${field}${unit}`;
    const show = (value: number | null): string => (value === null ? "-" : showQuantity(make(value), reader));
    const isPriced = line.cost !== null;
    return {
      id: line.id,
      name: tellPhrase(nameMaterial(line.id), reader),
      takes: show(onBoard + wasted),
      wasted: wasted === 0 ? "-" : show(wasted),
      buy: isPriced ? sayBuy(line, { show, pack, taken: onBoard + wasted }, reader) : "-",
      left: isPriced && left !== 0 ? show(left) : "-",
      cost: isPriced ? showQuantity(count(line.cost ?? 0), reader) : t`no price`,
      why: {
        takes: amountAt("onBoard"),
        ...(wasted === 0 ? {} : { wasted: amountAt("wasted") }),
        ...(isPriced && {
          buy: line.packs === null ? amountAt("bought") : `${at}.packs`,
          ...(left === 0 ? {} : { left: amountAt("left") }),
          cost: `${at}.cost`,
        }),
      },
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
      : [
          t`Left out, without a price: ${unpriced.map((id) => tellPhrase(nameMaterial(id), reader)).join("; ")}.`,
        ]),
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
  /** What it is bought by, and the unit that the plan's names then end in. */
  readonly kind: "mass" | "length" | "volume" | "pieces";
  readonly unit: string;
} {
  if (kg !== null) {
    const { onBoardKg: onBoard, wastedKg: wasted, packKg: pack, leftKg: left } = kg;
    return { onBoard, wasted, pack, left, make: mass, kind: "mass", unit: "Kg" };
  }
  if (m !== null) {
    const { onBoardM: onBoard, wastedM: wasted, packM: pack, leftM: left } = m;
    return { onBoard, wasted, pack, left, make: (v) => length(v), kind: "length", unit: "M" };
  }
  if (m3 !== null) {
    const { onBoardM3: onBoard, wastedM3: wasted, packM3: pack, leftM3: left } = m3;
    return { onBoard, wasted, pack, left, make: volume, kind: "volume", unit: "M3" };
  }
  return {
    kind: "pieces",
    unit: "Count",
    onBoard: pieces?.onBoardCount ?? 0,
    wasted: 0,
    pack: pieces?.packCount ?? null,
    left: pieces?.leftCount ?? null,
    make: count,
  };
}
