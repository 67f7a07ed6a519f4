import { length, mass, say, volume } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import type { Reader } from "./Reader";
import { tell } from "./tell";
import { tellPhrase } from "./tellPhrase";

const inEnglish: Reader = { units: "mm", language: "en" };
const inGerman: Reader = { units: "mm", language: "de" };

describe("tell", () => {
  it("gives the text in the reader's units", () => {
    const t = tell({ units: "inch", language: "en" });
    expect(t`widest ${length(0.508)}, ${"by hand"}`).toBe("widest 20 in, by hand");
  });

  it("writes the German decimal comma in quantities and bare numbers, and leaves names alone", () => {
    const t = tell(inGerman);
    expect(t`${mass(0.0046)} ${volume(0.0123)} ${1.5} ${"2.5"} ${"e-136.2b"}`).toBe(
      "4,6 g 12,3 L 1,5 2,5 e-136.2b",
    );
    expect(tell(inEnglish)`${mass(0.0046)} ${1.5}`).toBe("4.6 g 1.5");
  });

  it("translates words and sentences within a sentence", () => {
    expect(tellPhrase(say`${"left"}: ${say`${"right"}`}`, inGerman)).toBe("links: rechts");
  });

  it("stays English where there is no German", () => {
    expect(tell(inGerman)`no catalogue has ${length(0.1)} of this`).toBe("no catalogue has 100 mm of this");
  });

  it("writes out a time of the calendar that was put in", () => {
    expect(tell(inEnglish)`by ${"2026-04-12T12:25"} or ${"day 2 09:05"}`).toBe(
      "by Sun 12 Apr, 12:25 or Day 2, 09:05",
    );
    expect(tell(inGerman)`${"2026-04-12T12:25"}; ${"day 2 09:05"}`).toBe("So 12. Apr., 12:25; Tag 2, 09:05");
    expect(tell(inGerman)`${"2026-99-12T12:25"}`).toBe("2026-99-12T12:25");
  });

  it("knows nothing but its own texts", () => {
    expect(tell(inGerman)`constructor`).toBe("constructor");
    expect(tell(inGerman)`${"toString"}`).toBe("toString");
  });
});
