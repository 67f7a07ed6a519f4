import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { duration, formatQuantity, type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatCheckText, formatPlanText } from "../src";

const READER = { units: "mm", language: "en" } as const;

function planWith(change: (file: Record<string, Record<string, unknown>>) => void): Plan {
  const file = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  change(file);
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

/** The part of the page from one heading to the next. */
function blockOf(text: string, title: string): readonly string[] {
  const lines = text.split("\n");
  const from = lines.findIndex((line) => line.startsWith(`${title} ---`));
  const next = lines.findIndex((line, i) => i > from && / -{5,}$/.test(line));
  return lines.slice(from, next);
}

const RESIN = {
  kind: "peroxide",
  name: "shed polyester",
  dose: { least: "1 %", most: "2 %" },
  gel: [
    { temperature: "15 C", dose: "1 %", gels: "74 min" },
    { temperature: "15 C", dose: "2 %", gels: "28 min" },
    { temperature: "20 C", dose: "1 %", gels: "48 min" },
    { temperature: "25 C", dose: "1 %", gels: "58 min" },
  ],
};

describe("gel points that contradict each other", () => {
  const plan = planWith((file) => {
    file.materials = { resins: { mine: RESIN } };
    file.glass = { ...file.glass, resin: "mine" };
  });

  test.each([
    ["the plan", formatPlanText(plan, READER)],
    ["the check", formatCheckText(plan, READER)],
  ])("are plotted and marked in %s", (_, text) => {
    expect(text).toContain("Gel points of shed polyester");
    const plot = text.split("\n").filter((line) => /^ +(\d.*)?\|/.test(line));
    // Warmer stands to the right of colder, and the two odd ones are marked.
    const at = (mark: string) => plot.map((line) => line.indexOf(mark)).find((place) => place >= 0) ?? -1;
    expect(at("3!")).toBeGreaterThan(0);
    expect(at("4!")).toBeGreaterThan(at("3!"));
    expect(text.match(/read it again/g)?.length).toBeGreaterThanOrEqual(2);
    for (const line of blockOf(text, "MIX")) expect(line.length).toBeLessThanOrEqual(80);
  });
});

describe("a resin that only light sets", () => {
  const plan = planWith((file) => {
    file.glass = { ...file.glass, resin: "sunlight" };
  });
  const mix = blockOf(formatPlanText(plan, READER), "MIX");

  test("has its time in the sun by UV index, and neither hardener nor clock", () => {
    const [, , summer] = plan.mix?.resins[0]?.exposures ?? [];
    const row = mix.find((line) => line.includes("UV index 6"));
    expect(row).toContain(formatQuantity(duration(summer?.exposureS ?? 0), "mm"));
    expect(mix.some((line) => line.includes("spread by"))).toBe(false);
  });
});

describe("cups in colour, several to a coat", () => {
  const plan = planWith((file) => {
    file.glass = { ...file.glass, tint: { laminate: "1.5 %" } };
    file.shop = { ...file.shop, dropsPerMl: 24, people: 1, experience: "first" };
    file.shop.temperature = { day: "30 C", night: "24 C" };
    file.shop.resinTemperature = "30 C";
  });
  const mix = blockOf(formatPlanText(plan, READER), "MIX").join("\n");

  test("stand in order with their stretch, their drops and their master batch", () => {
    expect(mix).toContain("drops");
    expect(mix).toContain("covers, from the");
    expect(mix.replace(/\s+/g, " ")).toContain("as one master batch");
    for (const line of mix.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  test("and their vapour is never called a compliance calculation", () => {
    expect(mix.replace(/\s+/g, " ")).toContain("Not a compliance calculation");
  });
});
