import { say } from "@lapline/engine";
import { tell } from "../../language/tell";
import { tellPhrase } from "../../language/tellPhrase";
import type { Typesetter } from "../pdf/Typesetter";
import type { TemplateForReader, TemplateTable } from "../template/Template";
import { besidePiece } from "./flow/besidePiece";
import type { FlowPiece } from "./flow/FlowPiece";
import { tablePiece } from "./flow/tablePiece";
import { HEADING, TextPieces } from "./flow/textPieces";
import { type MappedPart, pageMaps } from "./pageMap";

export interface CoverRoom {
  readonly type: Typesetter;
  readonly widthMm: number;
  /** Text a little smaller than usual, where that saves a page; 1 if left out. */
  readonly scale?: number;
}

const PRINTING = say`Print at 100 %, never fitted to the page. On every page measure both rulers, 100 mm and 4 in, along and up, and the square: 100 mm from 60 on one to 80 on the other. If a ruler is off, give what the 100 mm one measures, for example --ruler-reads "99.2 mm", or across and up "99.2 mm x 99.6 mm", and print again.`;
const JOINING = say`Cut each page along its dashed lines, at the right and at the top, and lay it over its neighbour: cut edge to the thin line, cross on cross, lines running on. Tape from the middle outwards.`;

/** All that must be read before the paper is used: what stops the work, figures, how the pages join, what to do, cautions. */
export function coverPieces(
  template: TemplateForReader,
  parts: readonly MappedPart[],
  room: CoverRoom,
): readonly FlowPiece[] {
  const { reader } = template;
  const t = tell(reader);
  const make = new TextPieces(room.type, room.widthMm, room.scale);
  const page = [PRINTING, ...(parts.length > 0 ? [JOINING] : [])].map((phrase) => tellPhrase(phrase, reader));
  const steps = [...page, ...template.steps];
  return [
    make.title(template.boardName),
    make.paragraph(t`${template.title} at full size. ${template.orientation}`),
    ...template.stops.map((stop) => make.stop(t`STOP: ${stop}`)),
    ...figurePieces(template, parts, room),
    make.heading(t`What to do`),
    ...steps.map((step, i) => make.step(step, i + 1)),
    ...(template.cautions.length > 0
      ? [make.heading(t`Cautions`), ...template.cautions.map((caution) => make.caution(caution))]
      : []),
  ];
}

const BESIDE_MM = 10;

/** Tables, notes and the map of the pages: it stands beside the last table and the notes where there is room, else under them. */
function figurePieces(
  template: TemplateForReader,
  parts: readonly MappedPart[],
  { type, widthMm, scale }: CoverRoom,
): readonly FlowPiece[] {
  const make = new TextPieces(type, widthMm, scale);
  const tables = template.tables.map((table): readonly FlowPiece[] => [
    make.heading(table.title),
    tablePiece(table, widthMm, type),
  ]);
  const notesIn = (text: TextPieces) => template.notes.map((note) => text.paragraph(note));
  if (parts.length === 0) return [...tables.flat(), ...notesIn(make)];
  const heading = make.heading(tell(template.reader)`How the pages lie`);
  const besideMm = tableWidthMm(template.tables.at(-1), widthMm, type);
  const beside = pageMaps(parts, widthMm - besideMm - BESIDE_MM, template.reader);
  if (beside.length > 1 || (beside[0]?.widthMm ?? 0) > widthMm - besideMm - BESIDE_MM) {
    return [...tables.flat(), ...notesIn(make), heading, ...pageMaps(parts, widthMm, template.reader)];
  }
  const left = [...(tables.at(-1) ?? []), ...notesIn(new TextPieces(type, besideMm, scale))];
  return [...tables.slice(0, -1).flat(), besidePiece(left, [heading, ...beside], besideMm + BESIDE_MM)];
}

/** As wide as a table or its heading, and wide enough for a line of text. */
function tableWidthMm(table: TemplateTable | undefined, widthMm: number, type: Typesetter): number {
  if (table === undefined) return LEAST_COLUMN_MM;
  return Math.max(
    tablePiece(table, widthMm, type).widthMm,
    type.widthMm(table.title, HEADING),
    LEAST_COLUMN_MM,
  );
}

const LEAST_COLUMN_MM = 80;
