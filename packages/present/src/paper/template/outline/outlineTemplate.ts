import { length, type Plan } from "@lapline/engine";
import type { Drawing } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { tell } from "../../../language/tell";
import { symmetrySentences } from "../../../words/symmetrySentences";
import { cautionsAt } from "../cautionsAt";
import { developAlong } from "../developAlong";
import { developOutline, readEdge } from "../developOutline";
import { stopsOf } from "../stopsOf";
import type { Template, TemplateTable } from "../Template";
import { halfDrawing } from "./halfDrawing";
import { type StationPlace, stationPlaces } from "./stationPlaces";

type Shape = NonNullable<Plan["shape"]>;

/** Both halves of this board's outline at full size, each its own paper, for the next board like it. */
export function outlineTemplate(plan: Plan, shape: Shape, reader: Reader): Template {
  const t = tell(reader);
  const develop = developAlong(shape, plan.finset);
  const edge = developOutline(shape, develop);
  const stations = stationPlaces(reader.units, {
    lengthTapeM: shape.lengthTapeM,
    widestTapeM: develop(shape.widthMaxFromTailM),
  });
  const crotchFromTailM = plan.finset?.line.crotchFromTailM ?? null;
  const crotchTapeM = crotchFromTailM === null ? 0 : develop(crotchFromTailM);
  const half = (side: "left" | "right") => {
    const drawing = halfDrawing({ side, edge, stations, crotchTapeM, boardName: plan.name, reader });
    return {
      id: side,
      title: side === "left" ? t`Left half` : t`Right half`,
      drawing,
      keepWhole: keepWholeOf(drawing, stations),
    };
  };
  return {
    kind: "outline",
    title: t`Outline`,
    boardName: plan.name,
    engine: plan.engine,
    orientation: t`Deck up, nose away: left is on your left hand.`,
    stops: stopsOf(plan, reader),
    notes: [
      t`Each half is this board as it was measured, from the stringer line to the rail's widest line, so the two differ as the board does. For a board alike on both sides choose one half and turn it over.`,
      t`Along the board it is by tape along the bottom: laid along the bottom of a blank with the same rocker it comes out the same.`,
      ...symmetrySentences(plan, reader),
    ],
    steps: [
      t`Join the pages of a half and cut along the thick line; for use again, glue it on thin board first.`,
      t`Lay the straight edge on the blank's stringer, tail to tail, deck up and nose away, and draw round it. Mark the stations.`,
      t`Measure across at each station before the blank is cut.`,
    ],
    cautions: cautionsAt(plan, ["prep"]),
    tables: [stationTable(edge, stations, reader)],
    parts: [half("left"), half("right")],
  };
}

function stationTable(
  edge: ReturnType<typeof developOutline>,
  stations: readonly StationPlace[],
  reader: Reader,
): TemplateTable {
  const t = tell(reader);
  const show = (valueM: number) => showQuantity(length(valueM), reader);
  return {
    title: t`Half-widths at the stations`,
    wordColumns: 1,
    columns: [t`from the tail, by tape`, t`left`, t`right`],
    rows: stations.flatMap(({ tapeM }) => {
      const point = readEdge(edge, tapeM);
      return point === null ? [] : [[show(tapeM), show(point.leftM), show(point.rightM)]];
    }),
  };
}

/** No joint runs along the stringer's straight edge, nor through a station. */
const keepWholeOf = ({ frame }: Drawing, stations: readonly StationPlace[]) => ({
  x: [frame.origin.x],
  y: stations.map(({ tapeM }) => frame.origin.y + frame.alongMmPerM.y * tapeM),
});
