import { type BoardFile, utcOfWall } from "@lapline/contract";
import { type Board, type Plan, SHOP_DEFAULTS } from "@lapline/engine";
import { type Reader, tell } from "@lapline/present";
import { planner } from "../plan/tabPlanner";
import { saveFile } from "./saveFile";

export interface BoardOnPage {
  readonly id: string;
  readonly file: BoardFile;
  readonly board: Board;
  readonly plan: Plan;
  readonly reader: Reader;
}

export interface Paper {
  readonly id: string;
  readonly name: string;
  /** What it is for, in a line. */
  readonly words: string;
  /** Whether the plan has what it takes. */
  readonly isThere: boolean;
  /** Makes it in the page and hands it to the browser; what it is made with is fetched only then. */
  make(): Promise<void>;
}

/** What can be taken away from a board's page, made here from what stands on it. */
export function boardPapers(on: BoardOnPage): readonly Paper[] {
  const t = tell(on.reader);
  const { plan, file } = on;
  const hasDays = plan.calendar?.some(({ startsAt }) => startsAt?.includes("T") === true) ?? false;
  return [
    {
      id: "calendar",
      name: t`Calendar (.ics)`,
      words: t`the steps with their alarms, for a phone's calendar`,
      isThere: hasDays,
      make: () => makeCalendar(on),
    },
    ...(["fins", "outline", "cloth"] as const).map((of) => ({
      id: `template-${of}`,
      name: {
        fins: t`Fin template (.dxf)`,
        outline: t`Outline template (.dxf)`,
        cloth: t`Cloth pattern (.dxf)`,
      }[of],
      words: t`true size in millimetres, for a router or a cutter`,
      isThere: { fins: plan.finset, outline: plan.shape, cloth: plan.layup }[of] !== null,
      make: () => makeTemplate(on, of),
    })),
    ...(["3mf", "glb"] as const).map((ending) => ({
      id: `solid-${ending}`,
      name: ending === "3mf" ? t`Solid (.3mf)` : t`Solid (.glb)`,
      words:
        ending === "3mf" ? t`the surveyed board in millimetres, to mill` : t`the same in metres, to look at`,
      isThere: plan.shape !== null,
      make: () => makeSolid(on, ending),
    })),
    {
      id: "survey",
      name: t`Readings (.csv)`,
      words: t`the stations as a table for a spreadsheet`,
      isThere: file.survey.stations.length > 0,
      make: () => makeTable(on, "survey"),
    },
    {
      id: "marks",
      name: t`Fin marks (.csv)`,
      words: t`the marks as a table for a spreadsheet`,
      isThere: plan.finset !== null,
      make: () => makeTable(on, "marks"),
    },
    {
      id: "plan",
      name: t`Plan (.json)`,
      words: t`every number of this page, in SI, for another program`,
      isThere: true,
      make: async () => saveFile(`${on.id}-plan.json`, "application/json", JSON.stringify(plan, null, 2)),
    },
  ];
}

async function makeCalendar({ id, file, plan, reader }: BoardOnPage): Promise<void> {
  const { calendarIcs } = await import("@lapline/present/calendar");
  const zone = file.shop?.timeZone;
  const text = calendarIcs([{ board: file.order?.serial ?? file.name, plan }], {
    stamp: new Date(),
    reader,
    hours: file.shop?.hours ?? SHOP_DEFAULTS.hours,
    utcOf: zone === undefined ? null : (wallText) => utcOfWall(zone, wallText),
  });
  if (text !== null) saveFile(`${id}.ics`, "text/calendar", text);
}

async function makeTemplate({ id, plan, reader }: BoardOnPage, of: "fins" | "outline" | "cloth") {
  const { buildTemplate, templateDxf } = await import("@lapline/present/paper");
  const template = buildTemplate(plan, { of, reader });
  if (template !== null) saveFile(`${id}-${of}.dxf`, "image/vnd.dxf", templateDxf(template));
}

async function makeSolid({ id, board, plan }: BoardOnPage, ending: "3mf" | "glb"): Promise<void> {
  const mesh = await planner.mesh(board.survey, "fine");
  if (mesh === null) return;
  const { solid3mf, solidGlb } = await import("@lapline/present/solid");
  const solid = { name: plan.name, engine: plan.engine, mesh };
  const bytes = ending === "3mf" ? solid3mf(solid) : await solidGlb(solid);
  saveFile(`${id}.${ending}`, ending === "3mf" ? "model/3mf" : "model/gltf-binary", new Uint8Array(bytes));
}

async function makeTable({ id, file, plan, reader }: BoardOnPage, of: "survey" | "marks"): Promise<void> {
  const { formatMarksCsv, formatSurveyCsv } = await import("@lapline/contract/csv");
  const text = of === "survey" ? formatSurveyCsv(file) : formatMarksCsv(file, plan, reader.units);
  if (text !== null) saveFile(`${id}-${of}.csv`, "text/csv", text);
}
