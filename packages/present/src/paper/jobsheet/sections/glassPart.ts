import type { Plan } from "@lapline/engine";
import { skinStrip } from "../../../board/skinStrip";
import { pieceName } from "../../../words/pieceName";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { nameWords } from "../nameWords";
import { drawingPiece } from "../pieces/drawingPiece";
import { gridPiece } from "../pieces/gridPiece";
import { notePiece } from "../pieces/notePiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";

type Layup = NonNullable<Plan["layup"]>;

const SKIN_TEXT_MM = 2.85;

/** The skin in section, and the pieces to cut in the order they are laid. */
export function glassPart(context: SheetContext): SheetPart {
  const { plan, t } = context;
  const heading = tapeHeading(t`Glass and cut`, context);
  if (plan.layup === null)
    return { startsPage: false, pieces: [heading, ...missingPieces(context, "layup")] };
  return {
    startsPage: true,
    pieces: [
      heading,
      cutTable(plan.layup, context),
      besideCut(plan.layup, context),
      ...skinPieces(context),
      ...foundPieces(context, ["layup", "cutplan"]),
    ],
  };
}

function skinPieces(context: SheetContext): readonly FlowPiece[] {
  const { plan, ledger, reader, widthMm, t, type } = context;
  const measure = (text: string, sizeMm: number, role: "title" | "note"): number =>
    type.widthMm(text, { sizeMm, weight: role === "note" ? 400 : 600 });
  const strip = skinStrip(plan, { reader, widthMm, textMm: SKIN_TEXT_MM, measure });
  if (strip === null) return [];
  return [
    drawingPiece(strip, { alt: t`The skin in section, zone by zone.`, gapMm: 4 }),
    notePiece(ledger.drawn([t`The skin in section.`, ...strip.notes]), context),
  ];
}

function cutTable({ pieces }: Layup, { ledger, reader, t, type, widthMm }: SheetContext): FlowPiece {
  const rows = pieces.map(({ id, face, extent }) => {
    const at = `layup.pieces[${id}]`;
    const where =
      extent === null
        ? ""
        : t`${ledger.show(`${at}.extent.fromTailTapeM`)} to ${ledger.show(`${at}.extent.toTapeM`)} from the tail`;
    return [
      "x",
      ledger.told(`${at}.id`, nameWords(id, reader)),
      ledger.words(`${at}.cloth`),
      ledger.show(`${at}.lengthM`),
      ledger.show(`${at}.widthM`),
      [face === "deck" ? t`deck` : t`bottom`, where].filter((part) => part !== "").join(", "),
    ];
  });
  return gridPiece(
    {
      columns: [
        { head: t`cut`, kind: "tick" },
        { head: t`piece`, kind: "name" },
        { head: t`cloth`, kind: "words" },
        { head: t`length to cut`, kind: "act" },
        { head: t`width`, kind: "act" },
        { head: t`lies on`, kind: "words" },
      ],
      rows,
    },
    { type, widthMm },
  );
}

/** What to have on the roll, and how far the cloth goes around the rail. */
function besideCut({ faces }: Layup, context: SheetContext): FlowPiece {
  const { plan, ledger, reader, t } = context;
  const rolls = (plan.cutplan?.rolls ?? []).map(({ id }) => {
    const at = `cutplan.rolls[${id}]`;
    const [cloth, width] = [ledger.words(`${at}.cloth`), ledger.show(`${at}.widthM`)];
    return t`${ledger.show(`${at}.lengthM`)} of ${cloth}, ${width} wide`;
  });
  const repairs = (plan.cutplan?.repairs ?? []).map(({ id, patches }) => {
    const at = `cutplan.repairs[${id}]`;
    const rounds = patches.map((patch) => {
      const of = `${at}.patches[${patch.id}]`;
      return `${ledger.told(`${of}.id`, pieceName(patch.id, reader))}: ${ledger.show(`${of}.acrossM`)}`;
    });
    return t`${ledger.show(`${at}.lengthM`)} more of ${ledger.words(`${at}.cloth`)} for round patches (${rounds.join("; ")})`;
  });
  const hollows = (plan.repairs ?? []).flatMap(({ id, done, hollow }) => {
    if (done || hollow === null) return [];
    const at = `repairs[${id}]`;
    const place = t`${ledger.show(`${at}.fromTailM`)} from the tail`;
    const deep = ledger.show(`${at}.hollow.depthM`);
    return t`${place} it is ${deep} deep and takes ${ledger.show(`${at}.hollow.resinMassKg`)}`;
  });
  const laps = faces.map(({ id }) => {
    const lap = ledger.show(`layup.faces[${id}].lapM`);
    return id === "deck" ? t`deck ${lap}` : t`bottom ${lap}`;
  });
  const sentences = [
    ...(rolls.length === 0 ? [] : [t`Off the roll: ${rolls.join("; ")}.`]),
    ...(repairs.length === 0 ? [] : [t`For the repairs: ${repairs.join("; ")}.`]),
    ...(hollows.length === 0
      ? []
      : [
          t`Make the spot level before its patches, out of their cup and thickened until it stays put: ${hollows.join("; ")}.`,
        ]),
    t`Laps, from the rail's widest line around to the cloth's edge: ${laps.join(", ")}.`,
  ];
  return notePiece(sentences.join(" "), context);
}
