import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { keepDemoBoards, type RunningServer, startServer } from "@lapline/server";
import { openShop, type Shop } from "@lapline/store";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "../../../tests/browser/launchBrowser";
import { buildFirst } from "../../../tests/buildFirst";
import { ROOT } from "../../../tests/sourceFiles";

const NAME = '<img src=x onerror="document.title=1">';

let folder: string;
let shop: Shop;
let server: RunningServer;
let browser: Browser;
beforeAll(async () => {
  buildFirst("web");
  folder = await mkdtemp(join(tmpdir(), "lapline-access-"));
  const report = () => undefined;
  shop = await openShop({ folder, engine: "test", now: () => new Date(), report });
  await keepDemoBoards(shop);
  // Shared under the loopback's address, the one that every machine has.
  const share = { ports: [0], now: () => new Date(), addresses: () => ["127.0.0.1"] };
  const webFolder = join(ROOT, "packages", "web", "dist");
  [server, browser] = await Promise.all([
    startServer({ shop, webFolder, version: "test", ports: [0], report, share }),
    launchBrowser(),
  ]);
});
afterAll(async () => {
  await browser.close();
  await server.close();
  await shop.close();
  await rm(folder, { recursive: true });
});

const sharedAddress = () => server.shared?.addresses()[0] ?? "";

async function open(address: string, language: "en" | "de" = "en"): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 320, height: 640 },
    reducedMotion: "reduce",
    serviceWorkers: "block",
  });
  const page = await context.newPage();
  await page.addInitScript((kept) => window.localStorage.setItem("lapline.language", kept), language);
  await page.goto(address);
  return page;
}

async function expectForEveryone(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

test("whoever is not let in sees where the code goes, in keys for a thumb, and none of the shop", async () => {
  const page = await open(`${sharedAddress()}/board/five-ten-quad`, "de");
  await page.getByRole("heading", { name: "Dieses Gerät einlassen" }).waitFor();
  await expectForEveryone(page);
  for (const button of await page.locator("main button").all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  expect(await page.getByText("5'10").count()).toBe(0);
  await page.context().close();
});

test("a code typed by thumb: wrong ones are counted, and the locked one is told", async () => {
  const code = server.shared?.makeCode("bench").code ?? "";
  const page = await open(sharedAddress());
  await page.getByLabel(/others know/).fill("Phone");
  const wrong = code === "00000000" ? "11111111" : "00000000";
  for (const words of [/locked: 4/, /locked: 3/, /locked: 2/, /locked: 1/, /this one is locked/]) {
    for (const digit of wrong) await page.locator(".code-keys").getByText(digit, { exact: true }).click();
    await page.getByRole("button", { name: "Let it in" }).click();
    await page.getByRole("alert").getByText(words).waitFor();
  }
  expect(await shop.devices.list()).toEqual([]);
  await page.context().close();
});

test("a scanned code, by keyboard alone: in, the code gone from the address, and out again when it is put out", async () => {
  const offer = server.shared?.makeCode("bench");
  const page = await open(offer?.links[0] ?? "");
  await page.getByLabel("Code, eight digits").waitFor();
  await expect.poll(() => page.getByLabel("Code, eight digits").inputValue()).toBe(offer?.code);
  await expect.poll(() => page.url()).toBe(`${sharedAddress()}/pair`);
  // The code has brought the cursor to the name.
  const name = page.getByLabel(/others know/);
  await expect.poll(() => name.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.keyboard.type(NAME);
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: /5'10" quad/ }).waitFor();
  expect(await page.getByRole("link", { name: "Devices" }).count()).toBe(0);
  expect(await page.evaluate(() => document.cookie)).toBe("");

  const office = await open(`${server.address}devices`);
  await office.getByText(NAME).waitFor();
  await expect.poll(() => office.title()).toContain("Devices");
  await expectForEveryone(office);
  await office.getByRole("button", { name: `Put out ${NAME}` }).click();
  await office.getByRole("button", { name: "Put it out" }).click();
  await office.getByText(/No device yet/).waitFor();
  await office.context().close();
  await page.reload();
  await page.getByRole("heading", { name: "Let this device in" }).waitFor();
  await page.context().close();
});

test("at the shop's computer: from the Shed to a new code with its picture, and a device renamed", async () => {
  const page = await open(server.address);
  await page.getByRole("link", { name: "Devices" }).click();
  await page.getByRole("radio", { name: /keeper/ }).check();
  await page.getByRole("button", { name: "Make a code" }).click();
  const code = ((await page.locator(".offer-code").textContent()) ?? "").replace(" ", "");
  await page.getByRole("img", { name: /to scan/ }).waitFor();
  await expectForEveryone(page);
  const laptop = await open(`${sharedAddress()}/pair#${code}`);
  await laptop.getByLabel(/others know/).fill("Laptop");
  await laptop.getByRole("button", { name: "Let it in" }).click();
  await laptop.getByRole("link", { name: "Devices" }).waitFor();
  await page.getByText("The code was used.", { exact: false }).waitFor();
  await page.getByRole("button", { name: "Rename Laptop" }).click();
  await page.getByLabel("New name of Laptop").fill("Office");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Rename Office" }).waitFor();
  await laptop.context().close();
  await page.context().close();
});
