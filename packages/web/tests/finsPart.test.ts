import AxeBuilder from "@axe-core/playwright";
import { angle, formatQuantity, length, type Plan } from "@lapline/engine";
import { formatTapeLength } from "@lapline/present";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoPlan } from "./demoPlan";
import { openSite, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const BOARD = "five-ten-quad";
type Finset = NonNullable<Plan["finset"]>;

function markOf(finset: Finset, id: string): Finset["marks"][number] {
  const mark = finset.marks.find((each) => each.id === id);
  if (mark === undefined) throw new Error(`no mark ${id}`);
  return mark;
}

/** As it is read, with every kind of space made one. */
const flat = (text: string | null): string => (text ?? "").replace(/\s+/g, " ").trim();

test("another rule for the sides moves the marks on the drawing and in the table", async () => {
  const page = await site.openBoard(BOARD, { units: "mm", keeps: false });
  const fins = page.locator("#fins");
  const base = fins.locator(".layer-fins .pen-thick").first();
  const before = await base.getAttribute("d");
  await fins.getByRole("radio", { name: /^rail/ }).check();
  await expect.poll(() => base.getAttribute("d")).not.toBe(before);
  const { finset } = demoPlan({ sides: "rail" });
  const { fromRailM } = markOf(finset, "front-left").trailing;
  const row = fins.getByRole("row", { name: /^front left, trailing/ });
  await expect
    .poll(async () => flat(await row.getByRole("cell").last().textContent()))
    .toBe(formatTapeLength(fromRailM, { units: "mm", language: "en" }));
  await page.context().close();
});

test("toe typed in degrees is stated in degrees, and the string follows", async () => {
  const page = await site.openBoard(BOARD, { units: "mm", keeps: false });
  const front = page.locator("#fins").getByRole("group", { name: "front", exact: true });
  await front.getByLabel("degrees").fill("4");
  await front.getByRole("button", { name: "degrees: 4 deg" }).click();
  const set = demoPlan().fins.set.map((fin) =>
    fin.fin === "front" ? { ...fin, toe: { angle: "4 deg" } } : fin,
  );
  const { aimBesideNoseM } = markOf(demoPlan({ set }).finset, "front-left");
  await expect
    .poll(() => front.getByLabel("string, beside nose").inputValue())
    .toBe(formatTapeLength(aimBesideNoseM, { units: "mm", language: "en" }));
  await front.getByRole("group", { name: /^Toe, stated by degrees/ }).waitFor();
  await page.context().close();
});

test("a fin measured as set gets its errors, its correction and a drawing of both", async () => {
  const page = await site.openBoard(BOARD, { units: "mm", keeps: false });
  const fins = page.locator("#fins");
  const entry = fins.getByRole("group", { name: "Both marks, front left" });
  const readings = {
    "trailing, from tail": "292",
    "trailing, from line": "152",
    "leading, from tail": "403",
  };
  for (const [name, read] of Object.entries({ ...readings, "leading, from line": "148.2" }))
    await entry.getByLabel(name).fill(`${read} mm`);
  const { finset } = demoPlan({
    asSet: [
      {
        fin: "front",
        side: "left",
        trailing: { fromTail: "292 mm", fromCentreline: "152 mm" },
        leading: { fromTail: "403 mm", fromCentreline: "148.2 mm" },
      },
    ],
  });
  const [plan] = finset.asSet;
  const row = fins.getByRole("row", { name: /^front left/ }).filter({ hasText: "move:" });
  const words = expect.poll(async () => flat(await row.textContent()));
  await words.toContain(formatQuantity(length(plan?.leadingErrorM ?? 0, "fine"), "mm"));
  await words.toContain(formatQuantity(angle(plan?.toeErrorRad ?? 0, "fine"), "mm"));
  await words.toMatch(/move: leading end [\d.]+ mm inward/);
  await fins.getByRole("img", { name: /fins as set/ }).waitFor();
  await page.context().close();
});

/** Every mark, string, diagonal, block and stop as the plan has it, and everything confirmed but one. */
function readAsPlanned(finset: Finset): object {
  const mm = (valueM: number): string => `${(valueM * 1000).toFixed(2)} mm`;
  const deg = (valueRad: number): string => `${((valueRad * 180) / Math.PI).toFixed(2)} deg`;
  const place = ({ fromTailTapeM, fromCentrelineM }: Finset["marks"][number]["trailing"]) => ({
    fromTail: mm(fromTailTapeM),
    fromCentreline: mm(fromCentrelineM),
  });
  const oneEach = finset.marks.filter(({ side }) => side === "left");
  const { checks, boxes } = finset.verify;
  const boxOf = (id: string) => boxes.find((box) => box.id === id);
  return {
    asSet: finset.marks.map(({ fin, side, trailing, leading }) => ({
      fin,
      side,
      trailing: place(trailing),
      leading: place(leading),
    })),
    verify: {
      confirmed: checks.flatMap<string | object>(({ id, kind, madeFor }) => {
        if (kind !== "check" || id === "slots-taped") return [];
        if (madeFor === null) return [id];
        const { on, lengthM, widthM, depthM, cantRad } = madeFor;
        const pocket = { long: mm(lengthM ?? 0), wide: mm(widthM ?? 0), deep: mm(depthM ?? 0) };
        return [{ check: id, madeFor: { on, ...pocket, cant: deg(cantRad ?? 0) } }];
      }),
      strings: finset.marks.map(({ fin, side, aimBesideNoseM }) => ({
        fin,
        side,
        besideNose: mm(aimBesideNoseM),
      })),
      diagonals: finset.pairs.flatMap((pair) =>
        pair.diagonals.map(({ id, leftTapeM, rightTapeM }) => {
          const [from, to] = id.split("-");
          return { fin: pair.id, from, to, left: mm(leftTapeM), right: mm(rightTapeM) };
        }),
      ),
      cantBlocks: oneEach.map(({ fin, cantRad }) => ({ fin, cant: deg(cantRad) })),
      depthStops: oneEach.map(({ fin, id }) => ({ fin, depth: mm(boxOf(id)?.cutOut.depthM ?? 0) })),
      proud: oneEach.map(({ fin, id }) => ({ fin, height: mm(boxOf(id)?.proudM ?? 0) })),
    },
  };
}

test("the gate says what is out, then what is open, then go; and the fins are clear of faults for everyone", async () => {
  const file = demoPlan().file;
  const fins = { ...file.fins, ...readAsPlanned(demoPlan().finset) };
  const kept = await fetch(new URL("api/boards/gate", site.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ ...file, fins }),
  });
  expect(kept.ok).toBe(true);
  const page = await site.openBoard("gate", { viewport: { width: 360, height: 740 }, keeps: false });
  const gate = page.getByRole("region", { name: "Mark and verify" });
  const verdict = gate.getByRole("status").last();
  await expect
    .poll(async () => flat(await verdict.textContent()))
    .toBe("No cut yet. 1 check is still to be made. Next: Slots taped.");
  const block = gate.getByRole("group", { name: "Cant block, rear" }).getByLabel("block, as read");
  await block.fill("8 deg");
  await expect
    .poll(async () => flat(await verdict.textContent()))
    .toMatch(/^No cut yet. 1 check is out. Correct first: Cant block, rear.$/);
  const { violations } = await new AxeBuilder({ page }).include("#fins").analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await block.fill("4 deg");
  await gate.getByRole("checkbox", { name: "Slots taped" }).check();
  await expect.poll(async () => flat(await verdict.textContent())).toMatch(/^Go\./);
  const cant = page.locator("#fins").getByRole("group", { name: "front", exact: true }).getByLabel("cant");
  await cant.fill("60 deg");
  await expect
    .poll(async () => flat(await verdict.textContent()))
    .toBe("No cut. A field is not understood: front: cant.");
  await gate.getByRole("button", { name: "to the field" }).click();
  await expect.poll(() => cant.evaluate((field) => field === document.activeElement)).toBe(true);
  await page.context().close();
});
