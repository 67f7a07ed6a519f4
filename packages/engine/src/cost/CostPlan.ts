/** What the board's materials cost, in the shop's own money, whatever it is. */
export interface CostPlan {
  /** What this board takes, waste with it: all lines that have a price. */
  readonly materials: number;
  /** The same lines in whole packs, as they are bought. */
  readonly toBuy: number;
  /** Ids of the lines without a price: neither total has them. */
  readonly unpriced: readonly string[];
  readonly lines: readonly CostLinePlan[];
}

export type CostKind =
  | "blank"
  | "cloth"
  | "resin"
  | "hardener"
  | "wax"
  | "tint"
  | "filler"
  | "box"
  | "plug"
  | "own";

export interface CostLinePlan {
  /** As `shop.prices` names it: a cloth's or resin's id, `polyester-hardener`, `wax`, `tint`, `box`, `box-centre`, `leash-plug`, a foam's id. */
  readonly id: string;
  readonly kind: CostKind;
  /** Of one pack, or of a metre of cloth that is cut to length; null without a price. */
  readonly price: number | null;
  /** Whole packs to buy; null where it is cut to length, or has no price. */
  readonly packs: number | null;
  /** Of what this board takes, waste with it. */
  readonly cost: number | null;
  /** Of the whole packs. */
  readonly outlay: number | null;
  /** By one of the four, as the material is measured. Bought = on the board + wasted + left over. */
  readonly mass: MassAmounts | null;
  readonly length: LengthAmounts | null;
  readonly volume: VolumeAmounts | null;
  readonly pieces: PieceAmounts | null;
}

interface MassAmounts {
  readonly onBoardKg: number;
  readonly wastedKg: number;
  readonly packKg: number | null;
  readonly boughtKg: number | null;
  readonly leftKg: number | null;
}

/** Of cloth along the roll: what is cut away counts as wasted length. */
interface LengthAmounts {
  readonly onBoardM: number;
  readonly wastedM: number;
  readonly packM: number | null;
  readonly boughtM: number | null;
  readonly leftM: number | null;
}

interface VolumeAmounts {
  readonly onBoardM3: number;
  readonly wastedM3: number;
  readonly packM3: number | null;
  readonly boughtM3: number | null;
  readonly leftM3: number | null;
}

interface PieceAmounts {
  readonly onBoardCount: number;
  readonly wastedCount: number;
  readonly packCount: number | null;
  readonly boughtCount: number | null;
  readonly leftCount: number | null;
}
