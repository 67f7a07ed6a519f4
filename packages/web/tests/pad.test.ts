import { afterAll, beforeAll, expect, test } from "vitest";
import { tap } from "../../../tests/browser/tap";
import { openSite, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const PHONE = { width: 360, height: 740 };

test("a survey goes in by one thumb: a reading touched, keys, the other side, the next station, back to the table", async () => {
  const page = await site.openBoard("five-ten-quad", { viewport: PHONE, isTouched: true, keeps: false });
  const field = (name: string) => page.getByLabel(name, { exact: true });
  const holds = (name: string, text: string) => expect.poll(() => field(name).inputValue()).toBe(text);
  await tap(field("station 2, left"));
  const pad = page.getByRole("region", { name: /^Reading pad/ });
  const press = (name: string) => tap(pad.getByRole("button", { name, exact: true }));
  for (const key of ["6", "1/4", "1/8"]) await press(key);
  await holds("station 2, left", "6 3/8 in");
  await press("next");
  await expect
    .poll(() => field("station 2, right").evaluate((input) => input === document.activeElement))
    .toBe(true);
  await press("same as left");
  await holds("station 2, right", "6 3/8 in");
  await press("next station");
  for (const key of ["2", "4", "1", "mm"]) await press(key);
  await holds("station 3, right", "241 mm");
  await press("take back one key");
  await holds("station 3, right", "24 mm");
  await press("table");
  await expect.poll(() => pad.count()).toBe(0);
  await field("station 3, right").fill("9 1/2 in");
  expect(await pad.count()).toBe(0);
  await page.context().close();
});

test("a tick of the drawing touched brings the pad for the reading that was taken there", async () => {
  const page = await site.openBoard("five-ten-quad", { viewport: PHONE, isTouched: true, keeps: false });
  // Its place on the screen is asked for once: letters that come late and parts that come after would move it.
  await page.locator("#papers").waitFor();
  await page.evaluate(async () => void (await document.fonts.ready));
  const drawing = page.locator("#measure svg").first();
  await drawing.scrollIntoViewIfNeeded();
  const leader = await drawing.locator(".layer-readings path, .layer-readings line").first().boundingBox();
  if (leader === null) throw new Error("a reading has its line on the drawing");
  await page.touchscreen.tap(leader.x + leader.width / 2, leader.y + leader.height / 2);
  const pad = page.getByRole("region", { name: /^Reading pad, station 1/ });
  await pad.waitFor();
  const value = await page.locator("input:focus").inputValue();
  await expect.poll(async () => (await pad.locator("output").textContent())?.replace(/\s/g, " ")).toBe(value);
  await page.context().close();
});

test("with a mouse the table stays as it is, until big keys are asked for", async () => {
  const page = await site.openBoard("five-ten-quad", { keeps: false });
  const field = page.getByLabel("station 2, left", { exact: true });
  await field.click();
  expect(await page.locator(".pad").count()).toBe(0);
  await page.getByLabel("big keys").check();
  await field.click();
  await page.locator(".pad").waitFor();
  await page.context().close();
});
