import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { type Tell, tell } from "../../../language/tell";
import { cuttingSentence, notchSentences } from "../../../words/layupWords";
import { cautionsAt } from "../cautionsAt";
import { stopsOf } from "../stopsOf";
import type { Template, TemplatePart, TemplateTable } from "../Template";
import { type CutPiece, groupPieces, isFullLayer, type Layup } from "./CutPiece";
import { pieceDrawing } from "./pieceDrawing";

/** Every piece of cloth at full size as the plan cuts it. Pieces alike come once. */
export function clothTemplate(plan: Plan, layup: Layup, reader: Reader): Template {
  const t = tell(reader);
  return {
    kind: "cloth",
    title: t`Cloth`,
    boardName: plan.name,
    engine: plan.engine,
    orientation: t`Nose end up; deck pieces deck up, bottom pieces bottom up.`,
    stops: stopsOf(plan, reader),
    notes: noteSentences(layup, reader),
    steps: stepSentences(layup, t),
    // Common practice, no source.
    cautions: [
      t`Cut glass pricks and sheds fibres: sleeves and gloves, a particle filter, the floor wiped, not swept dry. Shears and wheels cut: other hand out of the way.`,
      ...cautionsAt(plan, []),
    ],
    tables: [pieceTable(layup, reader)],
    parts: groupPieces(layup).map((piece) => partOf(piece, reader)),
  };
}

function noteSentences(layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const hasLayers = layup.pieces.some(isFullLayer);
  return [
    ...(hasLayers ? [cuttingSentence(layup, reader), ...notchSentences(layup, reader)] : []),
    ...(hasLayers && layup.cutting === "rolled"
      ? [
          t`Full layers are drawn as they come off the roll. The dashed line is where the flat pattern lies in them, about where they are trimmed on the board; marking them by their sizes needs no paper.`,
        ]
      : []),
    t`Patches are drawn to their own edge: they have no lap and end at the rail's widest line.`,
  ];
}

function stepSentences({ cutting }: Layup, t: Tell): readonly string[] {
  return [
    t`Lay the warp along the arrow, on clean paper or card, never on the floor.`,
    cutting === "pattern"
      ? t`Mark the stringer line at both ends of each layer before the paper is lifted: it is the fold, and goes on the stringer. Cut the thick line, then the notches; stop each at its root.`
      : t`Mark the stringer line at both ends of each layer: it is the fold, and goes on the stringer. Notch the lap on the board.`,
    t`Write each piece's name on tape at its nose end, and which side is up, and keep them flat or rolled, in the order they are laid.`,
  ];
}

/** No joint runs along the stringer line or through a notch's root. */
function partOf(piece: CutPiece, reader: Reader): TemplatePart {
  const drawing = pieceDrawing(piece, reader);
  const { origin } = drawing.frame;
  return {
    id: piece.piece.id,
    title: piece.names.join(", "),
    drawing,
    keepWhole: {
      x: [origin.x],
      y: piece.pattern.notches.map(({ alongM }) => origin.y - 1000 * alongM),
    },
  };
}

function pieceTable({ pieces }: Layup, reader: Reader): TemplateTable {
  const t = tell(reader);
  const show = (valueM: number) => showQuantity(length(valueM), reader);
  return {
    title: t`Pieces`,
    wordColumns: 3,
    columns: [t`piece`, t`face`, t`cloth`, t`along the warp`, t`across`],
    rows: pieces.map(({ id, face, cloth, lengthM, widthM }) => [
      id,
      face === "deck" ? t`deck` : t`bottom`,
      cloth,
      show(lengthM),
      show(widthM),
    ]),
  };
}
