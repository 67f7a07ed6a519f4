import { length } from "@lapline/engine";
import { frameOf, type Lay, placeOnBoard, sheetSize } from "../../../board/Lay";
import type { Drawing, Item } from "../../../drawing/Drawing";
import { estimateTextWidthMm } from "../../../drawing/estimateTextWidthMm";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { type Tell, tell } from "../../../language/tell";
import { shortenToWidth } from "../../sheet/flow/shortenToWidth";
import type { EdgePoint } from "../developOutline";
import { readEdge } from "../developOutline";
import type { StationPlace } from "./stationPlaces";

export interface Half {
  readonly side: "left" | "right";
  readonly edge: readonly EdgePoint[];
  readonly stations: readonly StationPlace[];
  /** A swallow tail's crotch, by tape; nought for other tails. */
  readonly crotchTapeM: number;
  readonly boardName: string;
  readonly reader: Reader;
}

const MARGIN_MM = 10;
const FIGURE_MM = 4;
const BOARD_MM = 4.5;
/** With what stands before it no longer than the shortest page is high; each page's foot has the whole name. */
const NAME_AT_MOST_MM = 140;

/** One half of the board's outline from the stringer out, deck up and nose away, with its stations. */
export function halfDrawing(half: Half): Drawing {
  const lay = layOutHalf(half);
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [tell(half.reader)`One to one. Along the board the sheet is by tape along the bottom.`],
    layers: [
      { id: "stations", items: half.stations.flatMap((station) => stationItems(half, lay, station)) },
      { id: "outline", items: [edgeItem(half, lay)] },
      { id: "words", items: wordItems(half, lay) },
    ],
  };
}

const outM = ({ side }: Half, { leftM, rightM }: EdgePoint): number => (side === "left" ? leftM : -rightM);
const lengthM = ({ edge }: Half): number => edge.at(-1)?.tapeM ?? 0;

function layOutHalf(half: Half): Lay {
  const wideMm = 1000 * Math.max(...half.edge.map((point) => Math.abs(outM(half, point))));
  return {
    stands: true,
    face: "deck",
    mmPerM: 1000,
    uTotalMm: 1000 * lengthM(half) + 2 * MARGIN_MM,
    vTotalMm: wideMm + 2 * MARGIN_MM,
    uTailMm: MARGIN_MM,
    vStringerMm: half.side === "left" ? MARGIN_MM + wideMm : MARGIN_MM,
  };
}

/** What is cut: up the stringer, round the nose, down the edge to the tail, or into its notch. */
function edgeItem(half: Half, lay: Lay): Item {
  return {
    kind: "polyline",
    closed: true,
    pen: "thick",
    points: [
      ...half.edge.map((point) => placeOnBoard(lay, point.tapeM, outM(half, point))),
      placeOnBoard(lay, lengthM(half), 0),
      placeOnBoard(lay, half.crotchTapeM, 0),
    ],
  };
}

/** Square to the stringer at a station: where it is over the line, the half-width under it. */
function stationItems(half: Half, lay: Lay, station: StationPlace): readonly Item[] {
  const point = readEdge(half.edge, station.tapeM);
  if (point === null) return [];
  const [from, to] = [
    placeOnBoard(lay, station.tapeM, 0),
    placeOnBoard(lay, station.tapeM, outM(half, point)),
  ];
  const side = Math.sign(to.x - from.x);
  const figure = {
    kind: "text",
    sizeMm: FIGURE_MM,
    anchor: side === 1 ? "start" : "end",
  } as const;
  const x = from.x + side * 3;
  const show = (valueM: number) => showQuantity(length(valueM), half.reader);
  return [
    { kind: "line", pen: "thin", from, to },
    {
      ...figure,
      role: "note",
      at: { x, y: from.y - 1.4 },
      text: stationWords(station, show, tell(half.reader)),
    },
    {
      ...figure,
      role: "figure",
      at: { x, y: from.y + 4.6 },
      text: tell(half.reader)`half-width ${show(Math.abs(outM(half, point)))}`,
    },
  ];
}

function stationWords({ from, countedM }: StationPlace, show: (valueM: number) => string, t: Tell): string {
  if (from === "middle") return t`half length`;
  if (from === t`widest`) return t`widest`;
  return t`${show(countedM)} from the ${from}`;
}

/** The name and the side, along the board where it is wide. */
function wordItems(half: Half, lay: Lay): readonly Item[] {
  const t = tell(half.reader);
  const middle = placeOnBoard(lay, lengthM(half) * 0.42, 0);
  const side = half.side === "left" ? -1 : 1;
  const word = { kind: "text", anchor: "middle", turnRad: -Math.PI / 2 } as const;
  const at = (offMm: number) => ({ x: middle.x + side * offMm, y: middle.y });
  const name = shortenToWidth(half.boardName, NAME_AT_MOST_MM, (text) => estimateTextWidthMm(text, BOARD_MM));
  const [first, second] = side === -1 ? [72, 62] : [62, 72];
  return [
    {
      ...word,
      role: "title",
      sizeMm: 9,
      at: at(first),
      text: half.side === "left" ? t`LEFT half` : t`RIGHT half`,
    },
    { ...word, role: "note", sizeMm: BOARD_MM, at: at(second), text: t`deck up, nose away · ${name}` },
    {
      ...word,
      role: "note",
      sizeMm: 3.2,
      at: { x: middle.x + (side === -1 ? -1.5 : 4), y: middle.y },
      text: t`stringer line`,
    },
  ];
}
