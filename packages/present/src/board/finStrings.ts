import type { Plan } from "@lapline/engine";
import type { Item, Point } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { formatTapeLength } from "../words/formatTapeLength";
import { type FinMark, placeMark } from "./finMarkItems";
import { placeOnBoard } from "./Lay";
import { sidesAgree } from "./sidesAgree";
import { spreadLabels } from "./spreadLabels";
import type { TailView } from "./tailView";

type Finset = NonNullable<Plan["finset"]>;

interface FinString {
  readonly mark: FinMark;
  /** Where it leaves the drawing. */
  readonly end: Point;
}

/** Size of the words under a string's figure, over the figure's. */
const SMALL = 0.8;

/**
 * The string along each side fin's base, running off to the nose, and the point it runs to: how far beside the nose tip it
 * crosses. Named on the left only where both sides are alike.
 */
export function stringItems(
  finset: Finset,
  view: TailView,
  { reader, textMm }: { reader: Reader; textMm: number },
): readonly Item[] {
  const { lay } = view;
  const t = tell(reader);
  const strings = finset.marks
    .filter((mark) => mark.side !== "centre")
    .map((mark): FinString => ({ mark, end: runOff(mark, view) }))
    .sort((a, b) => a.end.x - b.end.x);
  const named = sidesAgree(finset) ? strings.filter((string) => string.mark.side === "left") : strings;
  const places = spreadLabels(
    named.map((string) => string.end.x),
    { gap: textMm * 5, from: textMm * 3, to: lay.vTotalMm - textMm * 2.6 },
  );
  return [
    ...strings.map(({ mark, end }): Item => {
      return { kind: "line", pen: "phantom", tone: "resin", from: placeMark(mark, "leading", lay), to: end };
    }),
    ...named.flatMap(({ mark, end }, i): Item[] => {
      const x = places[i] ?? end.x;
      const text = { kind: "text", anchor: "middle" } as const;
      const figure = formatTapeLength(Math.abs(mark.aimBesideNoseM), reader);
      return [
        { ...text, at: { x, y: end.y - 1.6 - textMm }, text: figure, sizeMm: textMm, role: "figure" },
        {
          ...text,
          at: { x, y: end.y - 1.4 },
          text: mark.aimBesideNoseM < 0 ? t`past centre` : t`beside nose`,
          sizeMm: textMm * SMALL,
          role: "note",
          tone: "soft",
        },
      ];
    }),
  ];
}

function runOff({ trailing, leading }: FinMark, { lay, reachM }: TailView): Point {
  const slope = (leading.at.yM - trailing.at.yM) / (leading.at.xM - trailing.at.xM);
  return placeOnBoard(lay, reachM, leading.at.yM + slope * (reachM - leading.at.xM));
}
