import { spawnSync } from "node:child_process";
import { cpus } from "node:os";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
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
import { buildCutplan } from "../packages/engine/src/cutplan/buildCutplan";
import { buildFinset } from "../packages/engine/src/finset/buildFinset";
import { buildLayup } from "../packages/engine/src/layup/buildLayup";
import { buildMix } from "../packages/engine/src/mix/buildMix";
import { buildShape } from "../packages/engine/src/shape/buildShape";
import { computeSkin } from "../packages/engine/src/shape/computeSkin";
import { computeSolid } from "../packages/engine/src/shape/computeSolid";
import { fitOutline } from "../packages/engine/src/shape/fitOutline";
import { fitThickness } from "../packages/engine/src/shape/fitThickness";
import { SurveyedShape } from "../packages/engine/src/shape/SurveyedShape";
import { buildSteps } from "../packages/engine/src/steps/buildSteps";
import { buildSurvey } from "../packages/engine/src/survey/buildSurvey";
import { buildWeight } from "../packages/engine/src/weight/buildWeight";
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
  return { id, board: read.board };
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
    const parts = { ...partsOf(board), "whole plan": () => planBuild(board) };
    for (const [name, call] of Object.entries(parts)) line(name, measureTime(call), yardstick);
  }
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

/** The fit and the quadrature by themselves, then each stage with what the others hand it. */
function partsOf(board: Board): Readonly<Record<string, () => unknown>> {
  const survey = buildSurvey(board.survey).value;
  if (survey === null) throw new Error(`${board.name}: no survey`);
  const fitShape = () => {
    const [outline, thickness] = [fitOutline(survey), fitThickness(survey)];
    if (outline === null || thickness === null) throw new Error(`${board.name}: no fit`);
    return new SurveyedShape(survey, outline.curve, thickness);
  };
  const solid = fitShape();
  const shape = buildShape(survey).value;
  const finset = buildFinset(board.fins, shape).value;
  const layup = buildLayup(board, shape).value;
  const mix = buildMix(board, layup).value;
  return {
    fit: fitShape,
    quadrature: () => [computeSolid(solid), computeSkin(solid)],
    survey: () => buildSurvey(board.survey),
    shape: () => buildShape(survey),
    finset: () => buildFinset(board.fins, shape),
    layup: () => buildLayup(board, shape),
    cutplan: () => buildCutplan(board, layup),
    mix: () => buildMix(board, layup),
    weight: () => buildWeight(board, shape, layup),
    steps: () => buildSteps(board, { finset, layup, mix }),
  };
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
  console.log(`  ${name.padEnd(12)} ${say(timing).padEnd(34)} ${ratio.padStart(8)}  ${note}`.trimEnd());
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
