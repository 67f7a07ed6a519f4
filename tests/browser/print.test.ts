import { expect, test } from "vitest";
import { readPdf } from "../../packages/present/tests/paper/readPdf";
import { runForTests } from "./runForTests";

const running = runForTests();

/** ISO 216. */
const A4_MM = { width: 210, height: 297 };
const PARTS = ["Measure", "Fins", "Glass", "Cut", "Mix", "Sand", "Seal", "Water"];

test("a board's page is printed on A4 with what bars it from the water first, no buttons, and each part where it begins a sheet", async () => {
  const context = await running.browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(new URL("board/five-ten-quad", running.app.address).href);
  await page.locator("#papers").waitFor();
  const pages = (await readPdf(new Uint8Array(await page.pdf({ format: "A4" })))).map(
    ({ widthMm, heightMm, texts }) => ({
      widthMm,
      heightMm,
      lines: texts.filter(({ isLevel }) => isLevel).toSorted((a, b) => a.y - b.y),
    }),
  );
  const textOf = ({ lines }: (typeof pages)[number]) => lines.map(({ text }) => text).join(" ");
  for (const { widthMm, heightMm } of pages) {
    expect(widthMm).toBeCloseTo(A4_MM.width, 0);
    expect(heightMm).toBeCloseTo(A4_MM.height, 0);
  }
  const [first] = pages;
  if (first === undefined) throw new Error("nothing was printed");
  expect(textOf(first)).toMatch(/5'10" quad.*Not for water: foam shows/);
  const all = pages.map(textOf).join(" ");
  for (const button of ["Mark done", "Write it down", "Issue a Sheet", "remove", "add a layer", "Undo"])
    expect(all).not.toContain(button);
  // Seal and the way to the water share a sheet; every other part has its name at the head of one.
  const heads = pages.map(({ lines }) => lines[0]?.text.trim());
  expect(PARTS.slice(1, -1).filter((part) => !heads.includes(part))).toEqual([]);
  await context.close();
});
