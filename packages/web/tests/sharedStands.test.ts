import { readFile } from "node:fs/promises";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { buildShopCalendar, planBuild } from "@lapline/engine";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildFirst } from "../../../tests/buildFirst";
import { openSite, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  buildFirst("web");
  site = await openSite();
});
afterAll(() => site.close());

test("the Shed shares one pair of stands out among the boards that are chosen: the engine's stays and surfs, and a file of them", async () => {
  const page = await site.open("/", { units: "mm" });
  await page.locator("summary", { hasText: "Days" }).click();
  const stands = page.locator(".shared-stands");
  await stands.locator("input[type=checkbox]").first().waitFor();
  const named = await stands.locator("label.stand-board").allTextContents();
  expect(named.length).toBeGreaterThanOrEqual(3);
  await stands.getByRole("button", { name: "Lay out their days" }).click();
  await stands.locator(".layer-stands").waitFor();
  await stands.locator("summary", { hasText: "Who stands where" }).click();
  const chosen = await stands.locator("label.stand-board:has(input:checked)").allTextContents();
  const boards = chosen.map((label) => {
    const demo = DEMO_BOARDS.find(({ file }) => file.name === label.trim());
    const read = readBoardFile(demo?.text ?? "");
    if (demo === undefined || !read.ok) throw new Error(label);
    return { id: demo.id, board: read.board, plan: planBuild(read.board) };
  });
  const { value: shop } = buildShopCalendar(boards, 1);
  if (shop === null) throw new Error("no days");
  const stays = stands.locator(".stand-list li");
  await expect.poll(() => stays.count()).toBe(shop.stands.length);
  const told = await stays.allTextContents();
  expect(told.every((stay) => stay.startsWith("Stands 1: "))).toBe(true);
  const surfs = await stands.locator("ul li").allTextContents();
  expect(surfs.filter((surf) => surf.includes("first surf"))).toHaveLength(boards.length);

  const [download] = await Promise.all([
    page.waitForEvent("download"),
    stands.getByRole("button", { name: "Calendar (.ics)" }).click(),
  ]);
  const ics = await readFile(await download.path(), "utf8");
  expect(ics.startsWith("BEGIN:VCALENDAR")).toBe(true);
  const unfolded = ics.replace(/\r\n /g, "");
  for (const { board } of boards) expect(unfolded).toContain(`SUMMARY:${board.name.replaceAll(",", "\\,")}`);

  await stands.locator("input[type=checkbox]:checked").first().uncheck();
  await expect.poll(() => stands.locator(".layer-stands").count()).toBe(0);
  await page.context().close();
});
