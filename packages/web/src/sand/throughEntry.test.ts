import { describe, expect, it } from "vitest";
import { throughEntry } from "./throughEntry";

const found = {
  face: "deck",
  side: "left",
  fromTail: "400 mm",
  fromCentreline: "180 mm",
  size: "30 mm",
  shows: "foam",
} as const;

describe("a sand-through typed on the page", () => {
  it("becomes an entry of the record with an id of its own", () => {
    expect(throughEntry([], found)).toEqual({ id: "r1", kind: "sand-through", ...found });
  });

  it("passes over ids that are taken", () => {
    const record = [{ id: "r2", kind: "done", step: "prep" }] as const;
    expect(throughEntry(record, found).id).toBe("r3");
    expect(throughEntry([...record, { id: "r3", kind: "done", step: "prep" }], found).id).toBe("r4");
  });
});
