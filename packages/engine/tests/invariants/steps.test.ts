import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Choices } from "../../src/steps/Choices";
import type { SandThrough } from "../../src/steps/Standing";
import { chooseRows } from "../../src/steps/stepTable";

const choices: fc.Arbitrary<Choices> = fc.record({
  finish: fc.constantFrom("sanded", "wet-sanded", "gloss"),
  boxes: fc.constantFrom("before-glass", "after-laminate", "after-fill", "glassed-on", null),
  plug: fc.constantFrom("before-glass", "after-laminate", "after-fill", null),
  isSealed: fc.boolean(),
  isPolystyrene: fc.boolean(),
  foam: fc.constantFrom("pu", "eps", "xps", null),
  lapKind: fc.constantFrom("free", "cut"),
  hasCloth: fc.record({ bottom: fc.boolean(), deck: fc.boolean() }),
  hasLogos: fc.boolean(),
  hasPinline: fc.boolean(),
  hasVent: fc.boolean(),
});

const sandThroughs = fc
  .array(
    fc.record({
      face: fc.constantFrom("deck" as const, "bottom" as const),
      shows: fc.constantFrom("weave" as const, "glass" as const, "foam" as const),
    }),
    { maxLength: 4 },
  )
  .map((list) =>
    list.map(
      (place, i): SandThrough => ({
        number: i + 1,
        entry: {
          ...place,
          id: `r${i}`,
          kind: "sand-through",
          side: "left",
          fromTailM: 0.4,
          fromCentrelineM: 0.1,
          sizeM: 0.03,
        },
      }),
    ),
  );

describe("whatever is chosen", () => {
  it("every step stands once and after all that it needs, so that nothing goes in a circle", () => {
    fc.assert(
      fc.property(choices, sandThroughs, (chosen, throughs) => {
        const seen = new Set<string>();
        for (const row of chooseRows(chosen, throughs)) {
          expect(seen.has(row.id), `${row.id} twice`).toBe(false);
          for (const need of row.needs)
            expect(seen.has(need.step), `${row.id} needs ${need.step}`).toBe(true);
          seen.add(row.id);
        }
      }),
      { seed: 20260411, numRuns: 2_000 },
    );
  });

  it("every step but the first needs something, and every step but the last is needed", () => {
    fc.assert(
      fc.property(choices, sandThroughs, (chosen, throughs) => {
        const rows = chooseRows(chosen, throughs);
        const needed = new Set(rows.flatMap(({ needs }) => needs.map(({ step }) => step)));
        for (const row of rows.slice(1)) expect(row.needs.length, row.id).toBeGreaterThan(0);
        for (const row of rows.slice(0, -1)) expect(needed.has(row.id), row.id).toBe(true);
      }),
      { seed: 20260411, numRuns: 500 },
    );
  });
});
