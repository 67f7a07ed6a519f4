import { describe, expect, it } from "vitest";
import type { BoardFile } from "../file/BoardFile";
import { readBoardFile } from "../readBoardFile";
import { boardFromFile } from "./boardFromFile";

const LEAST: BoardFile = {
  format: "lapline-board/1",
  name: "least",
  survey: { length: "5'10\"", nose: { kind: "pointed" }, tail: { kind: "round" }, stations: [] },
};

/** Every field of the contract once, with values that are plain in SI. */
const WHOLE: BoardFile = {
  format: "lapline-board/1",
  name: "whole",
  order: { rider: "rider A", riderMass: "74 kg", serial: "NS-1" },
  survey: {
    length: "2 m",
    lengthBy: "straight",
    stationsBy: "tape",
    tape: "1 mm",
    halfWidthsAt: "bottom-edge",
    twist: "-1.5 deg",
    nose: { kind: "round" },
    tail: { kind: "swallow", width: "20 cm", depth: "10 cm" },
    stations: [
      { fromTail: "300 mm", left: "18 cm", right: "18,5 cm", thickness: "40 mm", rocker: "20 mm" },
      { fromNose: "10 in", width: "10 in" },
    ],
    section: [
      {
        fromTail: "0 mm",
        apex: 0.4,
        deckFullness: 2.5,
        bottomFullness: 8,
        bottom: { kind: "vee", depth: "3 mm" },
      },
      {
        fromTail: "1 m",
        apex: 0.5,
        deckFullness: 2,
        bottomFullness: 6,
        bottom: [
          { fromTail: "900 mm", kind: "flat" },
          { fromTail: "1.5 m", kind: "concave", depth: "2 mm" },
        ],
      },
    ],
  },
  blank: { foam: "eps-19", stringer: { thickness: "3 mm", wood: "cedar" }, shapedMass: "900 g" },
  glass: {
    resin: { laminate: "epoxy", fill: "epoxy", gloss: "epoxy", box: "epoxy" },
    boxResin: "epoxy",
    resinRatio: 0.9,
    seal: true,
    lapKind: "cut",
    bottom: { layers: ["e-136"], lap: "5 cm" },
    deck: { layers: ["e-136", "e-203"] },
    patches: [
      { face: "deck", cloth: "e-136", fromTail: "0 mm", to: "600 mm", width: "300 mm", angle: "45 deg" },
    ],
    finish: "gloss",
  },
  fins: {
    arrangement: "tri",
    sides: "rail",
    boxes: "glassed-on",
    fromTailBy: "straight",
    fromTailOf: "crotch",
    tolerance: "0.5 mm",
    set: [
      {
        fin: "front",
        fromTail: "280 mm",
        fromRail: "30 mm",
        fromRailBy: "square-to-rail",
        base: "112 mm",
        toe: { overBase: "6 mm" },
        cant: "6 deg",
        depth: "115 mm",
        sweep: "33 deg",
        foil: { kind: "flat-inside", thickness: "8 %" },
        box: { length: "118 mm", width: "21 mm", depth: "18 mm", behindTrailing: "4 mm" },
      },
      { fin: "centre", fromTail: "90 mm", base: "112 mm" },
    ],
    leashPlug: {
      fromTail: "5 cm",
      fromCentreline: "16 mm",
      side: "right",
      diameter: "28 mm",
      depth: "14 mm",
    },
    asSet: [
      {
        fin: "front",
        side: "left",
        on: "fill",
        trailing: { fromTail: "281 mm", fromCentreline: "150 mm" },
        leading: { fromCentreline: "144 mm" },
        cant: "6.5 deg",
      },
    ],
  },
  shop: {
    temperature: [{ at: "2026-04-11T09:00", air: "20 C" }],
    humidity: "55 %",
    resinTemperature: "68 F",
    start: "2026-04-11T09:00",
    hours: { from: "09:00", to: "18:00" },
    stands: 1,
    people: 2,
    experience: "some",
    rolls: { "e-136": { width: "0.7 m", price: 9.5 } },
  },
  record: [
    { id: "r1", kind: "done", step: "prep", at: "2026-04-11T09:00" },
    { id: "r2", kind: "weighed", after: "laminate-bottom", mass: "2.1 kg" },
    {
      id: "r3",
      kind: "mixed",
      coat: "fill-bottom",
      base: "310 g",
      hardener: "4.6 g",
      resinTemperature: "19 C",
    },
    { id: "r4", kind: "touched", coat: "fill-bottom", feels: "hard", corrects: "r3" },
    {
      id: "r5",
      kind: "sand-through",
      face: "deck",
      side: "left",
      fromTail: "400 mm",
      fromCentreline: "180 mm",
      size: "30 mm",
      shows: "foam",
    },
  ],
};

const deg = (degrees: number): number => expect.closeTo((degrees * Math.PI) / 180, 12);

describe("boardFromFile", () => {
  it("keeps absent what is absent", () => {
    expect(boardFromFile(LEAST)).toStrictEqual({
      name: "least",
      survey: { lengthM: 1.778, nose: { kind: "pointed" }, tail: { kind: "round" }, stations: [] },
    });
  });

  it("takes a file with every field", () => {
    const read = readBoardFile(JSON.stringify(WHOLE));
    expect(read).toMatchObject({ ok: true, file: WHOLE });
  });

  it("turns the survey into SI", () => {
    expect(boardFromFile(WHOLE).survey).toStrictEqual({
      lengthM: 2,
      lengthBy: "straight",
      stationsBy: "tape",
      tapeM: 0.001,
      halfWidthsAt: "bottom-edge",
      twistRad: deg(-1.5),
      nose: { kind: "round" },
      tail: { kind: "swallow", widthM: 0.2, depthM: 0.1 },
      stations: [
        { fromTailM: 0.3, leftM: 0.18, rightM: 0.185, thicknessM: 0.04, rockerM: 0.02 },
        { fromNoseM: 0.254, widthM: 0.254 },
      ],
      sections: [
        { fromTailM: 0, apex: 0.4, deckFullness: 2.5, bottomFullness: 8 },
        { fromTailM: 1, apex: 0.5, deckFullness: 2, bottomFullness: 6 },
      ],
      bottoms: [
        { fromTailM: 0, kind: "vee", depthM: 0.003 },
        { fromTailM: 0.9, kind: "flat", depthM: 0 },
        { fromTailM: 1.5, kind: "concave", depthM: 0.002 },
      ],
    });
  });

  it("turns blank, glass and order into SI", () => {
    const { blank, glass, order } = boardFromFile(WHOLE);
    expect(order).toStrictEqual({ rider: "rider A", riderMassKg: 74, serial: "NS-1" });
    expect(blank).toStrictEqual({
      foam: "eps-19",
      stringer: { thicknessM: 0.003, wood: "cedar" },
      shapedMassKg: 0.9,
    });
    expect(glass).toStrictEqual({
      resin: { laminate: "epoxy", fill: "epoxy", gloss: "epoxy", box: "epoxy" },
      boxResin: "epoxy",
      resinRatio: 0.9,
      seal: true,
      lapKind: "cut",
      bottom: { layers: ["e-136"], lapM: 0.05 },
      deck: { layers: ["e-136", "e-203"] },
      patches: [{ face: "deck", cloth: "e-136", fromTailM: 0, toM: 0.6, widthM: 0.3, angleRad: deg(45) }],
      finish: "gloss",
    });
  });

  it("turns the fins into SI", () => {
    expect(boardFromFile(WHOLE).fins).toStrictEqual({
      arrangement: "tri",
      sides: "rail",
      boxes: "glassed-on",
      fromTailBy: "straight",
      fromTailOf: "crotch",
      toleranceM: 0.0005,
      set: [
        {
          fin: "front",
          fromTailM: 0.28,
          fromRailM: 0.03,
          fromRailBy: "square-to-rail",
          baseM: 0.112,
          toe: { kind: "overBase", overM: 0.006 },
          cantRad: deg(6),
          depthM: 0.115,
          sweepRad: deg(33),
          foil: { kind: "flat-inside", thickness: 0.08 },
          box: { lengthM: 0.118, widthM: 0.021, depthM: 0.018, behindTrailingM: 0.004 },
        },
        { fin: "centre", fromTailM: 0.09, baseM: 0.112 },
      ],
      leashPlug: { fromTailM: 0.05, fromCentrelineM: 0.016, side: "right", diameterM: 0.028, depthM: 0.014 },
      asSet: [
        {
          fin: "front",
          side: "left",
          on: "fill",
          trailing: { fromTailM: 0.281, fromCentrelineM: 0.15 },
          leading: { fromCentrelineM: 0.144 },
          cantRad: deg(6.5),
        },
      ],
    });
  });

  it.each([
    [{ aimBesideNose: "3 in" }, { kind: "aimBesideNose", offsetM: expect.closeTo(0.0762, 12) }],
    [{ aimBeyondNose: "1 m" }, { kind: "aimBeyondNose", beyondM: 1 }],
    [{ angle: "3 deg" }, { kind: "angle", angleRad: deg(3) }],
    [{ meets: "front" }, { kind: "meets", fin: "front" }],
  ])("turns toe %j into SI", (toe, expected) => {
    const fins = { arrangement: "single", set: [{ fin: "x", fromTail: "1 m", base: "1 cm", toe }] } as const;
    expect(boardFromFile({ ...LEAST, fins }).fins?.set[0]?.toe).toStrictEqual(expected);
  });

  it("turns the shop into SI", () => {
    expect(boardFromFile(WHOLE).shop).toStrictEqual({
      temperature: [{ at: "2026-04-11T09:00", airK: 293.15 }],
      humidity: 0.55,
      resinTemperatureK: expect.closeTo(293.15, 10),
      start: "2026-04-11T09:00",
      hours: { from: "09:00", to: "18:00" },
      stands: 1,
      people: 2,
      experience: "some",
      rolls: { "e-136": { widthM: 0.7, price: 9.5 } },
    });
    const dayAndNight = { temperature: { day: "18 C", night: "10 C" } };
    expect(boardFromFile({ ...LEAST, shop: dayAndNight }).shop?.temperature).toStrictEqual({
      dayK: 291.15,
      nightK: 283.15,
    });
  });

  it("turns the record into SI", () => {
    expect(boardFromFile(WHOLE).record).toStrictEqual([
      { id: "r1", kind: "done", step: "prep", at: "2026-04-11T09:00" },
      { id: "r2", kind: "weighed", after: "laminate-bottom", massKg: 2.1 },
      {
        id: "r3",
        kind: "mixed",
        coat: "fill-bottom",
        baseKg: 0.31,
        hardenerKg: 0.0046,
        resinTemperatureK: 292.15,
      },
      { id: "r4", kind: "touched", coat: "fill-bottom", feels: "hard", corrects: "r3" },
      {
        id: "r5",
        kind: "sand-through",
        face: "deck",
        side: "left",
        fromTailM: 0.4,
        fromCentrelineM: 0.18,
        sizeM: 0.03,
        shows: "foam",
      },
    ]);
  });
});
