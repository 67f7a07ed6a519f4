import fc from "fast-check";
import { expect, test } from "vitest";
import { compareFiles } from "./compareFiles";

const BEFORE = {
  name: "a",
  survey: { length: "5'10\"", stations: [{ left: "7 in" }, { left: "8 in" }] },
  record: [{ id: "r1", mass: "2 kg" }],
};

test("a field that one side changed is no clash, one that both changed is", () => {
  const kept = { ...BEFORE, name: "b", survey: { ...BEFORE.survey, length: "5'11\"" } };
  const sent = { ...BEFORE, survey: { ...BEFORE.survey, length: "6'0\"" } };
  expect(compareFiles({ before: BEFORE, kept, sent })).toEqual([
    { path: "name", before: "a", kept: "b", sent: "a", clash: false },
    { path: "survey.length", before: "5'10\"", kept: "5'11\"", sent: "6'0\"", clash: true },
  ]);
});

test("readings are told by place, entries by their id, and what is missing is left out", () => {
  const kept = { ...BEFORE, record: [{ id: "r2", mass: "3 kg" }, ...BEFORE.record] };
  const sent = { ...BEFORE, survey: { ...BEFORE.survey, stations: [{ left: "7 in" }, { left: "9 in" }] } };
  expect(compareFiles({ before: BEFORE, kept, sent })).toEqual([
    { path: "survey.stations[1].left", before: "8 in", kept: "8 in", sent: "9 in", clash: false },
    { path: "record[r2]", kept: { id: "r2", mass: "3 kg" }, clash: false },
  ]);
});

test("equal files have no difference, others have one, whatever is in them", () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (kept, sent) => {
      expect(compareFiles({ before: undefined, kept, sent: structuredClone(kept) })).toEqual([]);
      const there = compareFiles({ before: kept, kept, sent });
      const back = compareFiles({ before: kept, kept: sent, sent: kept });
      expect(there.map(({ path }) => path).sort()).toEqual(back.map(({ path }) => path).sort());
      expect(there.some(({ clash }) => clash)).toBe(false);
    }),
    { seed: 8, numRuns: 300 },
  );
});
