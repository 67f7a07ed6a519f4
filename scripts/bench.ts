import { spawnSync } from "node:child_process";
import { cpus } from "node:os";
import { type BoardFile, DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Board, buildBoardMesh, planBuild } from "@lapline/engine";
import { buildNestOrders, type NestOrder, searchNest } from "@lapline/nest";
import {
  buildTemplate,
  jobSheetPdf,
  type PaperName,
  type TemplateKind,
  templatePdf,
} from "@lapline/present/paper";
import { solid3mf, solidGlb } from "@lapline/present/solid";
import { boardFileSchema } from "../packages/contract/src/schema/boardFileSchema";
import { listParts } from "./bench/listParts";
import { measureBytes, measureTime, measureWait, type Timing } from "./bench/measure";
import { resurvey } from "./bench/resurvey";

const STATIONS = [9, 18, 36];
const PAPERS: ReadonlyArray<readonly [TemplateKind, PaperName]> = [
  ["fins", "a4"],
  ["fins", "roll"],
  ["outline", "a4"],
];
/** For what takes a tenth of a second and more. */
const FEW = { warmUp: 3, runs: 15 };
/** Megabytes for the young generation, so that one plan fits into it whole while its memory is measured. */
const YOUNG_MB = 256;

const boards = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`the demo board ${id} cannot be read`);
  return { id, board: read.board, file: read.file };
});

if (process.argv.includes("--memory")) {
  for (const { id, board } of boards) {
    console.log(`  ${id.padEnd(16)} ${(measureBytes(() => planBuild(board)) / 1e6).toFixed(2)} MB`);
  }
} else {
  await reportTimes();
}

async function reportTimes(): Promise<void> {
  const yardstick = measureTime(sumOfRoots);
  console.log(`Node ${process.versions.node}, ${process.platform} ${process.arch}, ${cpus().length} cores`);
  console.log(`yardstick, a million square roots: ${say(yardstick)}; "x" is in yardsticks\n`);
  for (const { id, board } of boards) {
    console.log(id);
    const whole = measureTime(() => planBuild(board));
    for (const [name, call] of Object.entries(listParts(board))) {
      const timing = measureTime(call);
      line(name, timing, yardstick, `${((100 * timing.p10Ms) / whole.p10Ms).toFixed(0)} % of the plan`);
    }
    line("whole plan", whole, yardstick);
  }
  console.log("\none key stroke on the page, from the file to the plan");
  for (const { id, board, file } of boards) reportKeyStroke(id, { board, file }, yardstick);
  console.log("\ngrowth of the whole plan with the stations");
  for (const { id, board } of boards) reportGrowth(id, board, yardstick);
  console.log("\nnesting, 3,000 layings (goal for 30 pieces: under 2 s)");
  for (const count of [10, 30]) {
    const order = clothOrder(count);
    line(
      `${count} pieces`,
      measureTime(() => nestWhole(order), { warmUp: 2, runs: 7 }),
      yardstick,
    );
  }
  console.log(
    "\npaper, from the plan to the bytes of a PDF (goals: fins on A4 under 300 ms, the Sheet under 400 ms)",
  );
  for (const { id, board } of boards) await reportPaper(id, board, yardstick);
  console.log("\nthe solid in a file, from the survey to the bytes");
  for (const { id, board } of boards) await reportSolid(id, board, yardstick);
  console.log("\nmemory that one plan allocates");
  const flags = ["--expose-gc", `--min-semi-space-size=${YOUNG_MB}`, `--max-semi-space-size=${YOUNG_MB}`];
  spawnSync(process.execPath, [...flags, process.argv[1] ?? "", "--memory"], { stdio: "inherit" });
}

/** What the page does between a field's edit and the paint, stage by stage. */
function reportKeyStroke(
  id: string,
  { board, file }: { readonly board: Board; readonly file: BoardFile },
  yardstick: Timing,
): void {
  const text = JSON.stringify(file);
  console.log(id);
  line(
    "to text",
    measureTime(() => JSON.stringify(file)),
    yardstick,
  );
  line(
    "read",
    measureTime(() => readBoardFile(text)),
    yardstick,
  );
  line(
    "of it schema",
    measureTime(() => boardFileSchema.safeParse(file)),
    yardstick,
  );
  line(
    "plan",
    measureTime(() => planBuild(board)),
    yardstick,
  );
}

/** So many pieces of 4 oz cloth off the demo boards, each board as often as it takes. */
function clothOrder(count: number): NestOrder {
  const many = Array.from({ length: 6 }, (_, i) =>
    boards.map(({ id, board }) => ({ name: `${id} ${i}`, plan: planBuild(board) })),
  ).flat();
  const order = buildNestOrders(many, { "e-136": 0.762 }).find(({ cloth }) => cloth === "e-136");
  if (order === undefined || order.pieces.length < count) throw new Error("too few pieces of 4 oz cloth");
  return { ...order, pieces: order.pieces.slice(0, count) };
}

function nestWhole(order: NestOrder): number {
  const running = searchNest(order, { seed: 1, layings: 3000 });
  let step = running.next();
  while (!step.done) step = running.next();
  return step.value.lengthM;
}

function reportGrowth(id: string, board: Board, yardstick: Timing): void {
  const plan = planBuild(board);
  const timings = STATIONS.map((count) => {
    const read = resurvey(board, plan, count);
    return { count, timing: measureTime(() => planBuild(read)) };
  });
  const first = timings[0]?.timing.medianMs ?? Number.NaN;
  console.log(id);
  for (const { count, timing } of timings) {
    const growth = `${(timing.medianMs / first).toFixed(2)} times for ${count / (STATIONS[0] ?? 1)} times the stations`;
    line(`${count} stations`, timing, yardstick, growth);
  }
}

async function reportPaper(id: string, board: Board, yardstick: Timing): Promise<void> {
  const plan = planBuild(board);
  const madeOn = { instant: new Date(0), date: "1970-01-01" };
  console.log(id);
  for (const [of, paper] of PAPERS) {
    const make = async () => {
      const template = buildTemplate(plan, { of, reader: { units: "inch", language: "en" } });
      if (template === null) throw new Error(`${id}: no ${of}`);
      return templatePdf(template, { paper, madeOn });
    };
    line(`${of} ${paper}`, await measureWait(make), yardstick);
  }
  const reader = { units: "inch", language: "en" } as const;
  const makeSheet = () =>
    jobSheetPdf({ plan, reader, paper: "a4", madeOn, url: "http://127.0.0.1:5170/boards/a" });
  line("Sheet a4", await measureWait(makeSheet), yardstick);
}

async function reportSolid(id: string, board: Board, yardstick: Timing): Promise<void> {
  const makeMesh = () => {
    const mesh = buildBoardMesh(board.survey);
    if (mesh === null) throw new Error(`${id}: no solid`);
    return mesh;
  };
  const solid = { name: board.name, engine: planBuild(board).engine, mesh: makeMesh() };
  console.log(id);
  line("mesh", measureTime(makeMesh, FEW), yardstick, `${solid.mesh.triangles.length / 3} triangles`);
  const sizeOf = (bytes: Uint8Array) => `${(bytes.length / 1e6).toFixed(2)} MB`;
  line(
    "3MF",
    measureTime(() => solid3mf(solid), FEW),
    yardstick,
    sizeOf(solid3mf(solid)),
  );
  line("glTF", await measureWait(() => solidGlb(solid)), yardstick, sizeOf(await solidGlb(solid)));
}

function line(name: string, timing: Timing, yardstick: Timing, note = ""): void {
  const ratio = `${(timing.medianMs / yardstick.medianMs).toFixed(2)} x`;
  console.log(`  ${name.padEnd(14)} ${say(timing).padEnd(34)} ${ratio.padStart(8)}  ${note}`.trimEnd());
}

function say({ medianMs, p10Ms, p90Ms }: Timing): string {
  return `${medianMs.toFixed(2)} ms (p10 ${p10Ms.toFixed(2)}, p90 ${p90Ms.toFixed(2)})`;
}

/** Work that every machine can be compared by. */
function sumOfRoots(): number {
  let sum = 0;
  for (let i = 0; i < 1_000_000; i++) sum += Math.sqrt(i + sum * 1e-9);
  return sum;
}
