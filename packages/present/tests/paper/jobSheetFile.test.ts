import { formatPhrase } from "@lapline/engine";
import { decodeQR } from "qr/decode.js";
import { describe, expect, test } from "vitest";
import { tellText } from "../../src/language/tellText";
import { jobSheetPdf, labelsPdf } from "../../src/paper";
import { composeSheet } from "../../src/paper/jobsheet/composeSheet";
import { createTypesetter } from "../../src/paper/pdf/renderPdf";
import { describePdf, extractText, renderPage } from "./poppler";
import { textsOf } from "./readPages";
import { readPdf } from "./readPdf";
import { READERS, requestFor, SHEET_BOARDS } from "./sheetBoards";

const flat = (text: string) => text.replace(/\s+/g, " ").trim();
const boardOf = (id: string) => {
  const board = SHEET_BOARDS.find((each) => each.id === id);
  if (board === undefined) throw new Error(`no board ${id}`);
  return board;
};
const INCHES = { units: "inch", language: "en" } as const;

describe.each(READERS)("a Sheet in $units, $language", (reader) => {
  const request = requestFor(boardOf("six-four-tri"), reader);

  test("gives every text that was set to another program's reader", async () => {
    const type = createTypesetter();
    const text = extractText(await jobSheetPdf(request));
    for (const page of composeSheet(request, type).pages) {
      for (const each of textsOf(page, type)) {
        // Turned text is taken out word by word.
        if ((each.item.turnRad ?? 0) === 0) expect(text).toContain(flat(each.text));
      }
    }
  });

  test("keeps what the PDF's own reader finds within the margins", async () => {
    for (const page of await readPdf(await jobSheetPdf(request))) {
      for (const { text, x, y, widthMm } of page.texts.filter(({ isLevel }) => isLevel)) {
        expect(x, text).toBeGreaterThan(8.5);
        expect(x + widthMm, text).toBeLessThan(page.widthMm - 8.5);
        expect(y, text).toBeLessThan(page.heightMm - 8.5);
      }
    }
  });

  test("has each caution in full at a step that is not done", async () => {
    const text = extractText(await jobSheetPdf(request));
    const open = (request.plan.steps ?? []).filter(({ done }) => !done);
    expect(open.length).toBeGreaterThan(10);
    for (const caution of open.flatMap(({ cautions }) => cautions)) {
      expect(text).toContain(flat(tellText(caution, reader)));
    }
  });
});

test("the same request gives the same bytes", async () => {
  const request = requestFor(boardOf("five-ten-quad"), INCHES);
  const [once, again] = await Promise.all([jobSheetPdf(request), jobSheetPdf(request)]);
  expect(Buffer.compare(once ?? new Uint8Array(), again ?? new Uint8Array([1]))).toBe(0);
});

test("the file has title, language, structure and date", async () => {
  const request = requestFor(boardOf("five-ten-quad"), { units: "mm", language: "de" });
  const pdf = await jobSheetPdf(request);
  const described = describePdf(pdf);
  expect(described.Title).toBe(`${request.plan.name}: das Blatt`);
  expect(described.Tagged).toBe("yes");
  expect(described.CreationDate).toContain("Apr 11 09:00:00 2026");
  expect(Buffer.from(pdf).toString("latin1")).toContain("/Lang (de)");
});

test("what stops the build and what keeps the board out of the water stand on the first page", async () => {
  const request = requestFor(boardOf("stopped"), INCHES);
  const [first] = await readPdf(await jobSheetPdf(request));
  const words = flat(first?.texts.map(({ text }) => text).join(" ") ?? "");
  const blockers = request.plan.findings.filter(({ severity }) => severity === "blocker");
  expect(blockers.length).toBeGreaterThan(0);
  for (const { says } of blockers) expect(words).toContain(flat(formatPhrase(says, "inch")));
  expect(request.plan.water.ready).toBe(false);
  for (const { says } of request.plan.water.open) expect(words).toContain(flat(formatPhrase(says, "inch")));
});

describe("the code of the board's page", () => {
  // ISO/IEC 18004, read back by a decoder that shares nothing with the writer (the library qr).
  test.each([
    "http://192.168.1.20:5170/boards/five-ten-quad",
    `https://shed.example/boards/${"a-long-name-".repeat(14)}`,
  ])("reads as %s off the printed page", async (url) => {
    const pdf = await jobSheetPdf({ ...requestFor(boardOf("five-ten-quad"), INCHES), url });
    const { widthPx, heightPx, greys, pxPerMm } = renderPage(pdf, 1);
    const size = Math.round(30 * pxPerMm);
    const left = widthPx - size - Math.round(6 * pxPerMm);
    const data = new Uint8ClampedArray(size * size * 4);
    for (let y = 0; y < size; y += 1) {
      for (let x = 0; x < size; x += 1) {
        const grey = greys[(y + Math.round(5 * pxPerMm)) * widthPx + left + x] ?? 255;
        data.set([grey, grey, grey, 255], (y * size + x) * 4);
      }
    }
    expect(heightPx).toBeGreaterThan(size);
    expect(decodeQR({ width: size, height: size, data })).toBe(url);
  });

  test("is left out without an address", async () => {
    const { url: _, ...request } = requestFor(boardOf("five-ten-quad"), INCHES);
    const [first] = await readPdf(await jobSheetPdf(request));
    expect(first?.texts.some(({ text }) => text.includes("The board's page"))).toBe(false);
  });
});

describe.each(READERS)("labels in $units, $language", (reader) => {
  test("are one for every cup and each resin's can, with the dose", async () => {
    const request = requestFor(boardOf("nine-two-long"), reader);
    const pdf = await labelsPdf(request);
    if (pdf === null) throw new Error("no labels");
    const text = extractText(pdf);
    const coats = request.plan.mix?.coats ?? [];
    const cups = coats.flatMap((coat) => coat.cups);
    const [cup, can] = reader.language === "en" ? ["cup", "can"] : ["Becher", "Dose"];
    const of = reader.language === "en" ? "of" : "von";
    expect(text.match(new RegExp(`${cup} \\d+ ${of} \\d+`, "g"))).toHaveLength(cups.length);
    expect(text.match(new RegExp(`\\b${can}\\b`, "g"))?.length).toBe(
      new Set(coats.map(({ resin }) => resin)).size,
    );
    for (const { texts, widthMm, heightMm } of await readPdf(pdf)) {
      for (const { text: words, x, y, widthMm: wide } of texts) {
        expect(x, words).toBeGreaterThan(8);
        expect(x + wide, words).toBeLessThan(widthMm - 8);
        expect(y, words).toBeLessThan(heightMm - 8);
      }
    }
  });
});

test("there are no labels where no cup is planned", async () => {
  expect(await labelsPdf(requestFor(boardOf("only-measured"), INCHES))).toBeNull();
});
