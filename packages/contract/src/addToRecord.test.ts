import fc from "fast-check";
import { expect, test } from "vitest";
import { addToRecord } from "./addToRecord";
import { DEMO_BOARDS } from "./demoBoards";
import { formatBoardFile } from "./formatBoardFile";
import { readBoardFile } from "./readBoardFile";

const read = readBoardFile(DEMO_BOARDS[0]?.text ?? "");
if (!read.ok) throw new Error("the demo board can be read");
const { file } = read;

const some = <T>(...values: T[]) => fc.constantFrom<T>(...values);
/** Entries that are right, and others with one thing wrong that a reader of the whole file sees. */
const entry = fc.record(
  {
    id: some<unknown>("n1", "n2", "n3", "", 7, "a b"),
    kind: some<unknown>("done", "weighed", "mixed", "struck", "other", null),
    step: some<unknown>("prep", "Prep", 3),
    after: some("prep"),
    mass: some<unknown>("3 kg", "3", "3 kg ", "500 kg"),
    coat: some("laminate-bottom"),
    base: some("100 g"),
    hardener: some("2 g", "200 g"),
    corrects: some("n1", "nowhere"),
    at: some("2026-04-11T11:20", "2026-02-30T11:20"),
    constructor: some(1),
  },
  { requiredKeys: ["id", "kind"] },
);

test("takes the entries that the whole file is read with, and no others", () => {
  const taken = { yes: 0, no: 0 };
  fc.assert(
    fc.property(fc.array(entry as fc.Arbitrary<object>, { minLength: 1, maxLength: 2 }), (entries) => {
      const added = addToRecord(file, structuredClone(entries));
      const whole = { ...file, record: [...(file.record ?? []), ...entries] } as unknown as typeof file;
      expect(added !== null).toBe(readBoardFile(formatBoardFile(whole)).ok);
      if (added !== null) expect(added).toEqual(whole);
      taken[added === null ? "no" : "yes"]++;
    }),
    {
      seed: 8,
      numRuns: 300,
      examples: [
        [[{ id: "n1", kind: "done", step: "prep" }]],
        [
          [
            { id: "n1", kind: "done", step: "prep" },
            { id: "n2", kind: "struck", corrects: "n1" },
          ],
        ],
        [[{ id: "n1", kind: "mixed", coat: "laminate-bottom", base: "100 g", hardener: "200 g" }]],
      ],
    },
  );
  expect(Math.min(taken.yes, taken.no)).toBeGreaterThan(1);
});

test("takes no name that changes what an object is, and no entry beyond the most", () => {
  const bad = JSON.parse('{"id":"n1","kind":"done","step":"prep","__proto__":{"kind":"done"}}') as unknown;
  expect(addToRecord(file, [bad])).toBeNull();
  const many = Array.from({ length: 2001 }, (_, i) => ({ id: `m${i}`, kind: "done", step: "prep" }));
  expect(addToRecord(file, many)).toBeNull();
  expect(addToRecord(file, many.slice(0, 1900))?.record).toHaveLength(1900 + (file.record?.length ?? 0));
});
