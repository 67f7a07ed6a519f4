import { count, length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { type Tell, tell } from "../language/tell";
import { pieceName } from "./pieceName";

type Layup = NonNullable<Plan["layup"]>;
type Schedule = Layup["compared"][number];
type Pattern = Layup["patterns"][number];
type Notch = Pattern["notches"][number];

/** How the full layers are cut, and what that asks of the builder. */
export function cuttingSentence(layup: Layup, reader: Reader): string {
  const t = tell(reader);
  return layup.cutting === "pattern"
    ? t`Cut to the flat pattern before anything is wet, laps and notches with it. Cloth is taken not to stretch: lay it from the middle outwards.`
    : t`Roll out to the cut length, smooth it from the middle, trim it on the board all round at the lap, and notch it. Cloth is taken not to stretch.`;
}

/** Where a full layer's lap is notched, how often and how wide; nothing for patches. */
export function notchSentences(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  return layup.patterns
    .filter((pattern) => pattern.notches.length > 0)
    .map((pattern) => {
      const places = (["nose", "rail", "tail"] as const).flatMap((at) => placeWords(pattern, at, t));
      return t`${layerNames(layup, pattern, reader)}: trim ${length(pattern.edgeM, "coarse")} round; notch ${places.join("; ")}`;
    })
    .concat(tipSentence(layup, t));
}

function tipSentence({ patterns }: Layup, t: Tell): readonly string[] {
  const hasTip = patterns.some(({ notches }) => notches.some((notch) => notch.takesTip));
  return hasTip
    ? [
        t`A notch that takes a whole corner out leaves it to the other face's lap: lay a scrap of the same cloth over what stays bare. Where flaps still overlap, press one over the other.`,
      ]
    : [];
}

function layerNames(layup: Layup, pattern: Pattern, reader: Reader): string {
  const own = layup.pieces.filter((piece) => piece.pattern === pattern.id);
  return own.map(({ id }) => pieceName(id, reader)).join(", ");
}

function placeWords({ notches }: Pattern, at: Notch["at"], t: Tell): readonly string[] {
  const wedges = notches.filter((notch) => notch.at === at && notch.kind === "wedge");
  const slits = notches.filter((notch) => notch.at === at && notch.kind === "slit");
  const where = { nose: t`at the nose`, tail: t`at the tail`, rail: t`along the rails` }[at];
  return [
    ...[false, true].flatMap((takesTip) => {
      const alike = wedges.filter((notch) => notch.takesTip === takesTip);
      const wide = length(Math.max(...alike.map((notch) => notch.openM)), "coarse");
      if (alike.length === 0) return [];
      return alike.length === 1
        ? [t`${where} one wedge, ${wide} wide at the edge`]
        : [t`${where} ${count(alike.length)} wedges, ${wide} wide at the edge`];
    }),
    ...(slits.length > 0 ? [t`one slit up to the crotch`] : []),
  ];
}

/** What a schedule beside the own changes. */
export function scheduleName(id: Schedule["id"], reader: Reader): string {
  const t = tell(reader);
  const names: Readonly<Record<Schedule["id"], string>> = {
    own: t`as planned`,
    "lighter-deck": t`one deck layer less`,
    "lighter-bottom": t`bottom one step lighter`,
    "heavier-deck": t`one deck layer more`,
    "heavier-bottom": t`bottom one step heavier`,
    "stronger-glass": t`stronger glass`,
  };
  return names[id];
}

/** A schedule's layers, innermost first. */
export function scheduleLayers({ bottom, deck }: Schedule): string {
  return `${bottom.join(" + ") || "-"} / ${deck.join(" + ") || "-"}`;
}

/** What the comparison of schedules is not. */
export function comparisonLimits(reader: Reader): string {
  const t = tell(reader);
  return t`Shares of the board as planned, from generic moduli: bending where it is thickest (laminate theory; foam and stringer with it) and the load that folds a flat skin into waves (Hoff's formula). Left out: shear, twist, blows, heel dents, voids, heat, age, and how well it was laid. Nothing here says that a board is strong enough.`;
}
