import { count, length, nameZone, type Plan, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";

type Sanding = NonNullable<Plan["sanding"]>;
type SandZone = Sanding["zones"][number];

/** What a zone is called; boxes, which come out alike, by one name. */
export function zoneName(id: string, reader: Reader): string {
  return tellPhrase(id.startsWith("box-") ? say`over the boxes` : nameZone(id), reader);
}

/** The zones as rows of a table, the one that goes through first in front; the boxes are one. */
export function sandRows(zones: Sanding["zones"]): readonly SandZone[] {
  const first = zones.find(({ id }) => id.startsWith("box-"));
  return zones
    .filter((zone) => !zone.id.startsWith("box-") || zone === first)
    .toSorted((a, b) => a.rank - b.rank);
}

/** A film in a column whose head says µm: small enough that one unit reads for all of them, in both systems. */
export function filmFigure(valueM: number, reader: Reader): string {
  return showQuantity(count(Math.round(valueM * UM)), reader).replace("-", "−");
}

const UM = 1e6;

/** What the budget says of a zone, in a word or two. */
export function riskWord(risk: SandZone["risk"], reader: Reader): string {
  const t = tell(reader);
  return { through: t`through`, thin: t`thin`, enough: t`enough` }[risk];
}

/** The thinnest place along the rails: `left rail, 60 cm from the tail: 40 µm`. Null where no rail is known. */
export function worstSentence({ worst }: Sanding, reader: Reader): string | null {
  if (worst === null) return null;
  const t = tell(reader);
  const at = length(worst.fromTailM, "coarse");
  const left = length(Math.max(worst.remainingM, 0));
  const short = length(Math.max(-worst.remainingM, 0));
  if (worst.remainingM >= 0) {
    return worst.side === "left"
      ? t`Thinnest: left rail, ${at} from the tail: ${left}.`
      : t`Thinnest: right rail, ${at} from the tail: ${left}.`;
  }
  return worst.side === "left"
    ? t`Thinnest: left rail, ${at} from the tail: through, ${short} short.`
    : t`Thinnest: right rail, ${at} from the tail: through, ${short} short.`;
}

/** When to stop, what stays sharp, and what no number here can say. */
export function sandRules(reader: Reader): readonly string[] {
  const t = tell(reader);
  return [
    t`Shine left in a low spot is not chased: stop, dull it by hand, spot-fill it.`,
    t`Tail edge and the bottom's edge aft stay sharp: flat block, along the edge, never over it. Rails and nose stay round: soft pad, last, by hand.`,
    t`Each paper until the scratches of the one before are gone, and no longer. Pencil the face over before each; where the pencil is gone, go on.`,
    t`The films are planned, not measured: a gauge or weighed dust in the record replaces the model.`,
  ];
}
