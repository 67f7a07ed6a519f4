import type { BoardFile } from "@lapline/contract";
import type { Tell } from "@lapline/present";

export type OwnKind = Exclude<keyof NonNullable<BoardFile["materials"]>, "resins">;

/** One field of a record: typed, or one of a few. */
export interface OwnField {
  /** Its name in the record, `dose.least` for one in a part of it. */
  readonly name: string;
  label(t: Tell): string;
  /** A bare number, without a unit. */
  readonly isNumber?: true;
  /** What each choice is called, the one that stands without a choice first. */
  choices?(t: Tell): Readonly<Record<string, string>>;
}

interface OwnKindForm {
  /** What the field for a new one's name is called. */
  add(t: Tell): string;
  /** What a new one holds: enough to be filled in. */
  readonly start: object;
  readonly fields: readonly OwnField[];
}

const NAME: OwnField = { name: "name", label: (t) => t`what it is` };
const DENSITY: OwnField = { name: "density", label: (t) => t`density (kg/m3, lb/ft3)` };

/** The builder's own records, field by field. */
export const OWN_KINDS: Readonly<Record<OwnKind, OwnKindForm>> = {
  cloths: {
    add: (t) => t`a cloth or strip of your own, by a short name`,
    start: { fibre: "e-glass", mass: "" },
    fields: [
      NAME,
      {
        name: "fibre",
        label: (t) => t`fibre`,
        choices: (t) => ({
          "e-glass": t`E-glass`,
          "s-glass": t`stronger glass`,
          carbon: t`carbon`,
          basalt: t`basalt`,
        }),
      },
      { name: "mass", label: (t) => t`weighs (oz/yd2, g/m2)` },
      {
        name: "weave",
        label: (t) => t`weave`,
        choices: (t) => ({
          plain: t`plain`,
          "warp-heavy": t`heavier along the roll`,
          "one-way": t`all along the roll`,
        }),
      },
      { name: "width", label: (t) => t`roll's width` },
    ],
  },
  foams: {
    add: (t) => t`a foam of your own, by a short name`,
    start: { kind: "pu", density: "" },
    fields: [
      NAME,
      {
        name: "kind",
        label: (t) => t`kind of foam`,
        choices: (t) => ({
          pu: t`polyurethane`,
          eps: t`expanded polystyrene`,
          xps: t`extruded polystyrene`,
        }),
      },
      DENSITY,
    ],
  },
  fillers: {
    add: (t) => t`a filler of your own, by a short name`,
    start: { density: "", share: "" },
    fields: [
      NAME,
      { name: "density", label: (t) => t`density of the grains` },
      { name: "share", label: (t) => t`over resin, by weight (%)` },
    ],
  },
  tints: {
    add: (t) => t`a tint of your own, by a short name`,
    start: {},
    fields: [NAME, { name: "most", label: (t) => t`most that its sheet allows (%)` }],
  },
  woods: {
    add: (t) => t`a stringer wood of your own, by a short name`,
    start: { density: "" },
    fields: [NAME, DENSITY],
  },
};
