import type { BoardFile } from "@lapline/contract";
import type { Tell } from "@lapline/present";
import type { OwnField } from "./ownKinds";

type ResinFile = NonNullable<NonNullable<BoardFile["materials"]>["resins"]>[string];
type ResinKind = ResinFile["kind"];

export const RESIN_KINDS: readonly ResinKind[] = ["peroxide", "two-part", "sunlight"];

export const resinKindNames = (t: Tell): Readonly<Record<ResinKind, string>> => ({
  peroxide: t`polyester or vinyl ester, with peroxide`,
  "two-part": t`epoxy, two parts at a fixed ratio`,
  sunlight: t`sets in sunlight`,
});

/** What a new one holds: the fields that its kind cannot do without, to be filled in. */
export const RESIN_STARTS: Readonly<Record<ResinKind, ResinFile>> = {
  peroxide: {
    kind: "peroxide",
    dose: { least: "", most: "" },
    gel: [{ temperature: "", dose: "", gels: "" }],
  },
  "two-part": { kind: "two-part", ratioByMass: "", potLife: { lasts: "", mass: "", temperature: "" } },
  sunlight: { kind: "sunlight" },
};

/** A line of the gel table, or a cup timed in the shop. */
export const GEL_FIELDS: readonly OwnField[] = [
  { name: "temperature", label: (t) => t`at (20 C)` },
  { name: "dose", label: (t) => t`dose (%)` },
  { name: "gels", label: (t) => t`gels in (25 min)` },
];

const NAME: OwnField = { name: "name", label: (t) => t`what it is` };
const STYRENE: OwnField = { name: "styrene", label: (t) => t`styrene in it (%)` };
const WAX: OwnField = { name: "wax", label: (t) => t`wax solution by volume (%), or none` };
const HARDENER: OwnField = { name: "hardenerDensity", label: (t) => t`density of the hardener` };
const ANY: readonly OwnField[] = [
  { name: "leastTemperature", label: (t) => t`cures from (15 C)` },
  { name: "recoat.until", label: (t) => t`next coat bonds for (24 h)` },
  { name: "recoat.at", label: (t) => t`at that air (20 C)` },
  { name: "density", label: (t) => t`density, mixed (kg/m3)` },
  { name: "curedDensity", label: (t) => t`density, cured (kg/m3)` },
];

/** As the data sheet gives it, what decides first. */
export const RESIN_FIELDS: Readonly<Record<ResinKind, readonly OwnField[]>> = {
  peroxide: [
    NAME,
    { name: "dose.least", label: (t) => t`least dose (%)` },
    { name: "dose.most", label: (t) => t`most dose (%)` },
    {
      name: "promoter",
      label: (t) => t`promoter`,
      choices: (t) => ({ "in-resin": t`in the resin`, "to-add": t`to be added` }),
    },
    STYRENE,
    WAX,
    HARDENER,
    ...ANY,
  ],
  "two-part": [
    NAME,
    { name: "ratioByMass", label: (t) => t`base to hardener by weight (100:45)` },
    { name: "ratioByVolume", label: (t) => t`base to hardener by volume (2:1)` },
    { name: "potLife.lasts", label: (t) => t`pot life (25 min)` },
    { name: "potLife.mass", label: (t) => t`of a cup of (100 g)` },
    { name: "potLife.temperature", label: (t) => t`at (20 C)` },
    HARDENER,
    ...ANY,
  ],
  sunlight: [
    NAME,
    { name: "exposure.uvIndex", label: (t) => t`UV index`, isNumber: true },
    { name: "exposure.takes", label: (t) => t`sets in (5 min)` },
    STYRENE,
    WAX,
    ...ANY,
  ],
};
