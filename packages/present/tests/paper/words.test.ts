import { angle, formatPhrase, formatQuantity, length, type Quantity } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatTapeLength } from "../../src";
import { makePdf } from "./makePdf";
import { PAPER_BOARDS, stoppedPlan } from "./paperBoards";
import { describePdf, extractText } from "./poppler";
import { type PdfPage, readPdf } from "./readPdf";

const UNITS = ["inch", "mm"] as const;
const CASES = PAPER_BOARDS.flatMap((board) => UNITS.map((units) => ({ ...board, units })));
const flat = (text: string) => text.replace(/\s+/g, " ");

describe.each(CASES)("$id in $units", ({ plan, units }) => {
  const show = (quantity: Quantity) => formatQuantity(quantity, units);
  const tape = (valueM: number) => formatTapeLength(valueM, { units, language: "en" });
  const bare = (valueM: number) => tape(valueM).replace(/ (in|mm)$/, "");

  test("the fins' figures are the plan's, and can be taken out as text", async () => {
    const { finset } = plan;
    if (finset === null) throw new Error("no fins");
    const text = extractText(await makePdf(plan, { of: "fins", paper: "a4", units }));
    const hasCrotch = plan.shape?.notch !== null;
    type End = (typeof finset.marks)[number]["trailing"];
    // Of a swallow tail from the tips and from the crotch, each under its own name.
    const fromTail = ({ fromTailTapeM, fromCrotchTapeM }: End) =>
      hasCrotch ? [fromTailTapeM, fromCrotchTapeM ?? Number.NaN] : [fromTailTapeM];
    if (hasCrotch) expect(text).toContain("trailing from tips from crotch");
    for (const mark of finset.marks) {
      const { trailing, leading } = mark;
      const aim = mark.aimBesideNoseM < 0 ? `${bare(-mark.aimBesideNoseM)} over` : bare(mark.aimBesideNoseM);
      const row = [
        mark.id.replaceAll("-", " "),
        ...[...fromTail(trailing), trailing.fromCentrelineM, trailing.fromRailM].map(bare),
        ...[...fromTail(leading), leading.fromCentrelineM].map(bare),
        mark.side === "centre" ? "–" : aim,
        show(angle(mark.toeRad)),
        show(angle(mark.cantRad)),
      ].join(" ");
      expect(text).toContain(row);
      for (const end of [trailing, leading]) {
        expect(text).toContain(`${tape(end.fromTailTapeM)} from the ${hasCrotch ? "tips" : "tail"}`);
        if (mark.side !== "centre") expect(text).toContain(`${tape(end.fromCentrelineM)} from the line`);
      }
    }
    for (const { leftTapeM, rightTapeM } of finset.pairs.flatMap(({ diagonals }) => diagonals)) {
      expect(text).toContain(`${tape(leftTapeM)} ${tape(rightTapeM)}`);
    }
  });

  test("the cut-outs' figures are the plan's, in the table and along each box", async () => {
    const { boxes } = plan.finset?.verify ?? { boxes: [] };
    const pdf = await makePdf(plan, { of: "fins", paper: "roll", units });
    const text = extractText(pdf);
    // Words that stand aslant are read with pdf.js: pdftotext breaks them up.
    const drawn = (await readPdf(pdf)).flatMap((page) => page.texts.map((each) => each.text)).join("\n");
    expect(boxes.length).toBeGreaterThan(2);
    for (const { cutOut } of boxes) {
      const fine = [cutOut.lengthM, cutOut.widthM, cutOut.depthM].map((valueM) =>
        show(length(valueM, "fine")),
      );
      expect(text).toContain(fine.map((size) => size.replace(/ (in|mm)$/, "")).join(" "));
      const [long, wide, deep] = fine;
      expect(drawn).toContain(`cut ${long} × ${wide}, ${deep} deep`);
    }
  });

  test("the cloth's sizes are the plan's", async () => {
    const text = extractText(await makePdf(plan, { of: "cloth", paper: "roll", units }));
    for (const piece of plan.layup?.pieces ?? []) {
      const size = [piece.lengthM, piece.widthM].map((valueM) => show(length(valueM))).join(" ");
      expect(text).toContain(`${piece.id} ${piece.face} ${piece.cloth} ${size}`);
    }
  });
});

describe.each(PAPER_BOARDS)("$id", ({ plan }) => {
  test.each(["a4", "letter", "a3", "roll"] as const)(
    "on %s each page says whose it is and how to print it",
    async (paper) => {
      const pages = await readPdf(await makePdf(plan, { of: "fins", paper }));
      pages.forEach((page, i) => {
        const words = footWords(page);
        const [name = ""] = words.split(" Fins");
        expect(plan.name.startsWith(name.replace(/…$/, "").trim())).toBe(true);
        expect(words).toContain(`· page ${i + 1} of ${pages.length} · Lapline ${plan.engine}, 2026-04-11`);
        expect(words).toContain("Print at 100 %.");
        expect(words).toContain("Bottom up, nose away: LEFT is on your right hand.");
      });
    },
  );

  test.each([
    ["fins", "letter"],
    ["outline", "a4"],
    ["cloth", "a4"],
    ["fins", "roll"],
  ] as const)("%s on %s: no line of text leaves what a printer can print", async (of, paper) => {
    for (const page of await readPdf(await makePdf(plan, { of, paper }))) {
      // A tile's drawing runs on under the neighbour's edge; whatever else is said must be whole.
      const texts = isTile(page) ? footTexts(page) : page.texts.filter(({ isLevel }) => isLevel);
      for (const { text, x, y, widthMm } of texts) {
        expect(x, text).toBeGreaterThan(5);
        expect(x + widthMm, text).toBeLessThan(page.widthMm - 5);
        expect(y, text).toBeLessThan(page.heightMm - 4);
      }
    }
  });

  test("says the plan's cautions where something is cut", async () => {
    const text = extractText(await makePdf(plan, { of: "fins", paper: "a4" }));
    const cautions = (plan.steps ?? [])
      .filter(({ id }) => id === "mark-fins" || id === "set-boxes")
      .flatMap((step) => step.cautions);
    expect(cautions.length).toBeGreaterThan(2);
    for (const caution of cautions) expect(text).toContain(flat(caution));
  });
});

/** A page of a part that is tiled is named at its foot. */
const isTile = (page: PdfPage): boolean => /, (?:[^,·]+ )?[A-Z]\d+ · page/.test(footWords(page));

/** What stands to the right of the level ruler; its lines start under one another. */
const footTexts = (page: PdfPage): PdfPage["texts"] =>
  page.texts.filter(({ x, y }) => y > page.heightMm - 28 && Math.abs(x - FOOT_FROM_MM) < 0.01);

const FOOT_FROM_MM = 119.5;

const footWords = (page: PdfPage): string =>
  flat(
    footTexts(page)
      .map(({ text }) => text)
      .join(" "),
  );

test("a blocker is said on the first page in full, and marked on every page", async () => {
  const plan = stoppedPlan();
  const pdf = await makePdf(plan, { of: "fins", paper: "a4" });
  const [blocker] = plan.findings.filter(({ severity }) => severity === "blocker");
  if (blocker === undefined) throw new Error("nothing stops this board");
  const says = flat(formatPhrase(blocker.says, "inch"));
  expect(extractText(pdf).toLowerCase()).toContain(`stop: ${says.toLowerCase()}`);
  for (const page of await readPdf(pdf)) expect(footWords(page)).toContain("STOP");
});

describe("the file", () => {
  const [board] = PAPER_BOARDS;
  if (board === undefined) throw new Error("no board");
  const { plan } = board;

  test("is the same, byte for byte, for the same plan and date", async () => {
    const [once, again] = await Promise.all([1, 2].map(() => makePdf(plan, { of: "fins", paper: "a4" })));
    expect(Buffer.compare(once ?? new Uint8Array(), again ?? new Uint8Array([1]))).toBe(0);
  });

  test("has title, language, structure and date, and asks not to be scaled", async () => {
    const pdf = await makePdf(plan, { of: "fins", paper: "a4" });
    const described = describePdf(pdf);
    expect(described.Title).toBe(`${plan.name}: Fins, full size`);
    expect(described.Tagged).toBe("yes");
    expect(described.CreationDate).toContain("Apr 11 09:00:00 2026");
    const raw = Buffer.from(pdf).toString("latin1");
    expect(raw).toContain("/PrintScaling /None");
    expect(raw).toContain("/Lang (en)");
  });
});
