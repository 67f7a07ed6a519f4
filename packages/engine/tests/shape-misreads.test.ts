import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import type { SurveyInput } from "../src/survey/SurveyInput";
import { makeRandomBoard, readWithNoise } from "./fixtures/randomBoard";
import { readReference } from "./fixtures/referenceShape";
import { makeRandom } from "./fixtures/seededRandom";
import { makeBoard } from "./fixtures/surveyTruth";

interface Misread {
  readonly name: string;
  readonly key: "halfWidth" | "thickness" | "rocker";
  /** Numbers in the nine recommended stations, from the tail. */
  readonly stations: readonly number[];
  readonly errorM: number;
  readonly expected: { readonly foundShare: number; readonly aloneShare: number };
}

interface Reference {
  readonly inputs: { readonly boards: number };
  readonly misreads: readonly Misread[];
}

const { inputs, misreads } = readReference<Reference>("noise");

describe("one misread reading on a board read with a millimetre of noise (reference/shape/noise.json)", () => {
  it.each(misreads)("$name", (misread) => {
    let found = 0;
    let alone = 0;
    for (let seed = 0; seed < inputs.boards; seed++) {
      const { survey, path } = misreadOne(seed, misread);
      const suspects = planBuild(makeBoard(survey)).shape!.readings.filter(({ suspect }) => suspect);
      if (suspects.some((reading) => reading.path === path)) {
        found++;
        if (suspects.length === 1) alone++;
      }
    }
    console.info(`${misread.name}: found ${found}, and nothing else ${alone}, of ${inputs.boards}`);
    expect(found / inputs.boards).toBeGreaterThanOrEqual(misread.expected.foundShare);
    expect(alone / inputs.boards).toBeGreaterThanOrEqual(misread.expected.aloneShare);
  });

  it("says what would have fitted, near the truth", () => {
    const misread = misreads[0]!;
    for (let seed = 0; seed < 40; seed++) {
      const { survey, path, beforeM } = misreadOne(seed, misread);
      const reading = planBuild(makeBoard(survey)).shape!.readings.find((each) => each.path === path)!;
      expect(Math.abs(reading.wouldFitM - beforeM), path).toBeLessThan(misread.errorM / 2);
    }
  });
});

function misreadOne(seed: number, { key, stations, errorM }: Misread) {
  const random = makeRandom(300_000 + seed);
  const station = stations[random.below(stations.length)]!;
  const side = random.below(2) === 0 ? "left" : "right";
  const sign = random.below(2) === 0 ? -1 : 1;
  const name = key === "halfWidth" ? side : key;
  const clean = readWithNoise(makeRandomBoard(seed), seed);
  const beforeM = clean.stations[station]![`${name}M`]!;
  // A tape shows no number below nought: there the error goes the other way.
  const readM = beforeM + sign * errorM >= 0 ? beforeM + sign * errorM : beforeM + errorM;
  const survey: SurveyInput = {
    ...clean,
    stations: clean.stations.map((each, i) => (i === station ? { ...each, [`${name}M`]: readM } : each)),
  };
  return { survey, path: `survey.stations[${station}].${name}`, beforeM };
}
