import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { cautionsAt } from "../cautionsAt";
import { stopsOf } from "../stopsOf";
import type { Template, TemplateTable } from "../Template";
import { type CutPiece, type Piece, pieceDrawing } from "./pieceDrawing";

type Layup = NonNullable<Plan["layup"]>;

/** Common practice, no source. */
const CUTTING =
  "Cut glass pricks and sheds fibres: sleeves and gloves, a particle filter, the floor wiped, not swept dry. Shears and wheels cut: other hand out of the way.";

/** Every piece of cloth at full size as the plan has it: a rectangle, laps with it. Pieces alike come once. */
export function clothTemplate(plan: Plan, layup: Layup, reader: Reader): Template {
  const cuts = groupPieces(layup, reader);
  return {
    kind: "cloth",
    title: "Cloth",
    boardName: plan.name,
    engine: plan.engine,
    orientation: "Nose end up.",
    stops: stopsOf(plan, reader),
    notes: [
      "Pieces are rectangles with their laps, as they are cut off the roll; the lap's edge is trimmed on the board.",
      "Roll out, mark by the sizes; the paper is for stacking, and for patches.",
    ],
    steps: [
      "Lay the warp along the arrow. Cut a full layer on clean paper or card, never on the floor.",
      "Write each piece's name on tape at its nose end and keep them flat or rolled, in the order they are laid.",
    ],
    cautions: [CUTTING, ...cautionsAt(plan, [])],
    tables: [pieceTable(layup, reader)],
    parts: cuts.map((cut) => {
      const drawing = pieceDrawing(cut);
      const title = `${cut.names.join(", ")}: cut ${cut.names.length}`;
      return { id: cut.piece.id, title, drawing, keepWhole: { x: [drawing.widthMm / 2], y: [] } };
    }),
  };
}

function groupPieces({ pieces, faces }: Layup, reader: Reader): readonly CutPiece[] {
  const groups: Piece[][] = [];
  for (const piece of pieces) {
    const alike = groups.find(([first]) => first !== undefined && isCutAlike(first, piece));
    if (alike === undefined) groups.push([piece]);
    else alike.push(piece);
  }
  return groups.flatMap((group) => {
    const [piece] = group;
    if (piece === undefined) return [];
    const lapM = piece.extent === null ? (faces.find(({ id }) => id === piece.face)?.lapM ?? null) : null;
    return [{ piece, names: group.map(({ id }) => id), lapM, reader }];
  });
}

function isCutAlike(a: Piece, b: Piece): boolean {
  return (
    a.face === b.face &&
    a.cloth === b.cloth &&
    a.lengthM === b.lengthM &&
    a.widthM === b.widthM &&
    JSON.stringify(a.extent) === JSON.stringify(b.extent)
  );
}

function pieceTable({ pieces }: Layup, reader: Reader): TemplateTable {
  const show = (valueM: number) => showQuantity(length(valueM), reader);
  return {
    title: "Pieces",
    wordColumns: 3,
    columns: ["piece", "face", "cloth", "along the board", "across"],
    rows: pieces.map(({ id, face, cloth, lengthM, widthM }) => [
      id,
      face,
      cloth,
      show(lengthM),
      show(widthM),
    ]),
  };
}
