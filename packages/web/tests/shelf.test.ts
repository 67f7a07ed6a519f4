import AxeBuilder from "@axe-core/playwright";
import type { BoardFile } from "@lapline/contract";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openSite, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const PATIENT = { timeout: 60_000 };
const unfold = (page: Page, name: string) => page.locator("#glass summary", { hasText: name }).click(PATIENT);
const fileOf = async (page: Page, id: string): Promise<BoardFile> =>
  (await page.request.get(new URL(`api/boards/${id}`, site.address).href)).json();
const put = (page: Page, path: string, data: object) =>
  page.request.put(new URL(`api/shelf/${path}`, site.address).href, { data });

test("a tint of one board is kept on the shelf and taken from it on another, in both languages", async () => {
  const page = await site.openBoard("five-ten-quad");
  await unfold(page, "Materials of your own");
  const newOne = page.getByLabel("a tint of your own, by a short name");
  await newOne.fill("harbour blue");
  await page.locator(".form-acts", { has: newOne }).getByRole("button", { name: "add it" }).click();
  const own = page.locator("fieldset", { hasText: "harbour-blue" });
  await own.getByLabel(/^most that its sheet allows/).fill("5 %");
  await unfold(page, "The shop's shelf");
  const line = page.locator(".shelf li", { hasText: "harbour-blue" });
  await line.getByText("on this board", { exact: true }).waitFor(PATIENT);
  await line.getByRole("button", { name: /^keep on the shelf/ }).click();
  await line.getByText("the same on this board and on the shelf").waitFor(PATIENT);
  const { violations } = await new AxeBuilder({ page }).include(".shelf").analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
  await page.context().close();

  const other = await site.openBoard("six-four-tri", { language: "de" });
  await unfold(other, "Das Regal der Werkstatt");
  await other.getByRole("button", { name: "aus dem Regal nehmen harbour-blue" }).click(PATIENT);
  await other.getByText("auf diesem Board und im Regal gleich").waitFor(PATIENT);
  await expect
    .poll(async () => (await fileOf(other, "six-four-tri")).materials?.tints, PATIENT)
    .toEqual({ "harbour-blue": { most: "5 %" } });
  await other.context().close();
});

test("what another device put on the shelf meanwhile is not written over, and a price is taken from it", async () => {
  const page = await site.open("");
  const address = new URL("api/boards/nine-two-long", site.address).href;
  const kept = await page.request.get(address);
  const data = { ...(await kept.json()), materials: { tints: { "own-red": { most: "3 %" } } } };
  await page.request.put(address, { data, headers: { "if-match": kept.headers().etag ?? "" } });
  const polyester = { price: 98, pack: "20 kg" };
  expect((await put(page, "prices/polyester", polyester)).status()).toBe(201);
  await page.goto(new URL("board/nine-two-long", site.address).href);
  await unfold(page, "The shop's shelf");

  const tint = page.locator(".shelf li", { hasText: "own-red" });
  await tint.getByText("on this board", { exact: true }).waitFor(PATIENT);
  expect((await put(page, "tints/own-red", { most: "4 %" })).status()).toBe(201);
  await tint.getByRole("button", { name: /^keep on the shelf/ }).click();
  await page.getByText("There is one already: look at it and do it again.").waitFor(PATIENT);
  await tint.getByText("not the same on this board and on the shelf").waitFor(PATIENT);
  await tint.getByRole("button", { name: /^keep on the shelf/ }).click();
  await tint.getByText("the same on this board and on the shelf", { exact: true }).waitFor(PATIENT);

  await page.getByRole("button", { name: "take from the shelf polyester" }).click(PATIENT);
  const price = async () => (await fileOf(page, "nine-two-long")).shop?.prices?.polyester;
  await expect.poll(price, PATIENT).toEqual(polyester);
  await page.context().close();
});
