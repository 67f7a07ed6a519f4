import { M_PER_INCH, radFromDegrees } from "../foundation/units";

/** A named set of fin numbers that a maker trusts, on the length of board it is trusted on. */
export interface HouseSet {
  readonly id: string;
  readonly name: string;
  /** In a line: what it is for. */
  readonly words: string;
  readonly arrangement: "single" | "twin" | "tri" | "quad" | "twin-trailer" | "five-box" | "single-sides";
  readonly forLengthM: number;
  readonly fins: readonly HouseFin[];
  readonly source: "common-practice";
}

/** Distances from the tail are by tape along the bottom, from the tips; from the rail square to the centreline. */
export interface HouseFin {
  readonly fin: string;
  readonly fromTailM: number;
  readonly fromRailM?: number;
  readonly baseM: number;
  readonly toe?:
    | { readonly kind: "aimBesideNose"; readonly offsetM: number }
    | { readonly kind: "overBase"; readonly overM: number }
    | { readonly kind: "meets"; readonly fin: string };
  readonly cantRad?: number;
}

const inches = (value: number) => value * M_PER_INCH;

/**
 * Generic sets to start from: the middle of what the trade sets out, common practice with no source. A maker's own sets
 * have the same form and are kept as data beside these.
 */
export const HOUSE_SETS: readonly HouseSet[] = [
  {
    id: "generic-tri",
    name: "generic tri",
    words: "Three fins for a short board in ordinary surf.",
    arrangement: "tri",
    forLengthM: inches(72),
    source: "common-practice",
    fins: [
      {
        fin: "front",
        fromTailM: inches(11),
        fromRailM: inches(1.125),
        baseM: inches(4.5),
        toe: { kind: "overBase", overM: inches(0.25) },
        cantRad: radFromDegrees(6),
      },
      { fin: "centre", fromTailM: inches(3.5), baseM: inches(4.5) },
    ],
  },
  {
    id: "generic-quad",
    name: "generic quad",
    words: "Four fins for a short board, the rears a little straighter than the fronts.",
    arrangement: "quad",
    forLengthM: inches(70),
    source: "common-practice",
    fins: [
      {
        fin: "front",
        fromTailM: inches(11.5),
        fromRailM: inches(1.1875),
        baseM: inches(4.375),
        toe: { kind: "aimBesideNose", offsetM: inches(2.5) },
        cantRad: radFromDegrees(6),
      },
      {
        fin: "rear",
        fromTailM: inches(6),
        fromRailM: inches(2),
        baseM: inches(3.75),
        toe: { kind: "overBase", overM: inches(0.125) },
        cantRad: radFromDegrees(4),
      },
    ],
  },
  {
    id: "generic-long-box",
    name: "generic long box with side fins",
    words: "One long centre box and two small side fins for a long board.",
    arrangement: "single-sides",
    forLengthM: inches(110),
    source: "common-practice",
    fins: [
      {
        fin: "front",
        fromTailM: inches(13),
        fromRailM: inches(1.375),
        baseM: inches(3.75),
        toe: { kind: "overBase", overM: inches(0.1875) },
        cantRad: radFromDegrees(5),
      },
      { fin: "centre", fromTailM: inches(5.5), baseM: inches(6.5) },
    ],
  },
];
