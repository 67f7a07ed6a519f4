import { describe, expect, it } from "vitest";
import { newEntry } from "./newEntry";

const found = {
  kind: "sand-through",
  face: "deck",
  side: "left",
  fromTail: "400 mm",
  fromCentreline: "180 mm",
  size: "30 mm",
  shows: "foam",
} as const;

describe("an entry typed on the page", () => {
  it("gets an id of its own", () => {
    expect(newEntry([], found)).toEqual({ id: "r1", ...found });
  });

  it("passes over ids that are taken", () => {
    const record = [{ id: "r2", kind: "done", step: "prep" }] as const;
    expect(newEntry(record, found).id).toBe("r3");
    expect(newEntry([...record, { id: "r3", kind: "done", step: "prep" }], found).id).toBe("r4");
  });
});
