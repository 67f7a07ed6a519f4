import { DEMO_BOARDS } from "@lapline/contract";
import type { Finding } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { partOf, partState } from "./parts";

const READER = { units: "mm", language: "en" } as const;

const finding = (code: string, path: string, severity: Finding["severity"] = "note"): Finding => ({
  code,
  severity,
  path,
  text: "",
  says: [],
});

describe("where a finding stands", () => {
  test.each([
    ["shape.asymmetry", "shape.symmetry", "measure"],
    ["finset.sides-recommended", "fins.sides", "fins"],
    ["layup.foam-dissolves", "glass.resin", "glass"],
    ["mix.too-cold", "shop.temperature", "mix"],
    ["weighins.lighter", "record[r2]", "glass"],
    ["cost.no-prices", "shop.prices", "glass"],
    ["unheard-of", "fins.set[0].toe", "fins"],
    ["unheard-of", "", "water"],
  ])("%s at %s stands in %s", (code, path, part) => {
    expect(partOf(finding(code, path))).toBe(part);
  });
});

describe("what stands by a part on the build line", () => {
  const read = planOf(DEMO_BOARDS[0]?.text ?? "");
  if (!read.ok) throw new Error("the demo board cannot be read");
  const plan = { ...read.plan, findings: [] };
  test("a blocker stops it, a warning is counted, a note is not", () => {
    expect(partState(plan, "fins", READER)).toBe("");
    const note = finding("finset.a", "");
    const warning = finding("finset.b", "", "warning");
    const blocker = finding("finset.c", "", "blocker");
    expect(partState({ ...plan, findings: [note] }, "fins", READER)).toBe("");
    expect(partState({ ...plan, findings: [note, warning] }, "fins", READER)).toBe("1 to look at");
    expect(partState({ ...plan, findings: [warning, warning] }, "fins", READER)).toBe("2 to look at");
    expect(partState({ ...plan, findings: [warning, blocker] }, "fins", READER)).toBe("stopped");
    expect(partState({ ...plan, findings: [blocker] }, "glass", READER)).toBe("");
  });
});
