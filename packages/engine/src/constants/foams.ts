import type { SourceId } from "../sources/sources";
import type { Sourced } from "./Sourced";

export type FoamKind = "pu" | "eps" | "xps";

interface FoamKindRecord {
  readonly name: string;
  /** Polyester, its box and repair resin, and acetone eat it. */
  readonly dissolvesInStyrene: boolean;
  readonly sold: {
    /** Densities that blanks of this foam are sold in. */
    readonly leastKgM3: number;
    readonly mostKgM3: number;
    /** How far a block may be off the density it is sold as. */
    readonly spreadShare: number;
    readonly source: SourceId;
  };
  /** Resin, once cured, that a square metre of bare foam has drunk from the first coat on it. */
  readonly uptakeKgM2: Sourced;
  /** The same where a seal coat went before. */
  readonly sealedUptakeKgM2: Sourced;
  /** Builders seal it before the glass. */
  readonly isSealedFirst: boolean;
}

export const FOAM_KINDS: Readonly<Record<FoamKind, FoamKindRecord>> = {
  pu: {
    name: "polyurethane",
    dissolvesInStyrene: false,
    sold: { leastKgM3: 25, mostKgM3: 120, spreadShare: 0.06, source: "common-practice" },
    uptakeKgM2: { value: 0.075, low: 0.05, high: 0.1, source: "common-practice" },
    sealedUptakeKgM2: { value: 0.03, low: 0.015, high: 0.05, source: "common-practice" },
    isSealedFirst: false,
  },
  eps: {
    name: "expanded polystyrene",
    dissolvesInStyrene: true,
    sold: { leastKgM3: 10, mostKgM3: 50, spreadShare: 0.06, source: "common-practice" },
    // The trade says "200 and more".
    uptakeKgM2: { value: 0.25, low: 0.2, high: 0.35, source: "common-practice" },
    sealedUptakeKgM2: { value: 0.05, low: 0.03, high: 0.08, source: "common-practice" },
    isSealedFirst: true,
  },
  xps: {
    name: "extruded polystyrene",
    dissolvesInStyrene: true,
    sold: { leastKgM3: 20, mostKgM3: 60, spreadShare: 0.06, source: "common-practice" },
    uptakeKgM2: { value: 0.04, low: 0.02, high: 0.08, source: "common-practice" },
    sealedUptakeKgM2: { value: 0.03, low: 0.015, high: 0.05, source: "common-practice" },
    isSealedFirst: false,
  },
};

/** Ids that stand for what is commonly sold; any other density of a kind is read from its id. */
export const FOAM_EXAMPLES: readonly string[] = [
  "pu-40",
  "pu-48",
  "pu-56",
  "eps-16",
  "eps-20",
  "eps-24",
  "eps-29",
  "xps-32",
];

export interface Foam {
  readonly id: string;
  readonly kind: FoamKind;
  readonly name: string;
  readonly densityKgM3: Sourced;
  /** Cured resin that a square metre drinks from the first coat: bare, and after a seal coat. */
  readonly uptakeKgM2: Sourced;
  readonly sealedUptakeKgM2: Sourced;
}

/**
 * The foam that an id names: its kind and, after the hyphen, its density in kg/m³ as sold (`pu-48`, `eps-20`, `xps-32`). Null
 * where the id is not of that form or the density lies outside what blanks of that kind are sold in.
 */
export function findFoam(id: string): Foam | null {
  const match = /^(pu|eps|xps)-(\d{1,3}(?:\.\d{1,2})?)$/.exec(id);
  if (match === null) return null;
  const kind = match[1] as FoamKind;
  const densityKgM3 = Number(match[2]);
  const { name, sold, uptakeKgM2, sealedUptakeKgM2 } = FOAM_KINDS[kind];
  if (densityKgM3 < sold.leastKgM3 || densityKgM3 > sold.mostKgM3) return null;
  const spread = sold.spreadShare * densityKgM3;
  return {
    id,
    name,
    kind,
    uptakeKgM2,
    sealedUptakeKgM2,
    densityKgM3: {
      value: densityKgM3,
      low: densityKgM3 - spread,
      high: densityKgM3 + spread,
      source: sold.source,
    },
  };
}
