import { z } from "zod/mini";
import type { StationFile, SurveyFile, TailFile } from "../file/SurveyFile";
import { fields } from "./fields";
import { type Limits, quantity } from "./quantity";
import { describeOneOf, listOf, oneOf, plainNumber } from "./words";

/** A longer board than any that is glassed in a shed. */
export const ALONG: Limits = { least: "0 mm", most: "5 m" };
const HALF_WIDTH: Limits = { least: "0 mm", most: "0.75 m" };
const WIDTH: Limits = { least: "0 mm", most: "1.5 m" };
const BOTTOM_DEPTH: Limits = { least: "0 mm", most: "50 mm" };

const length = (limits: Limits) => quantity("length", limits);
const along = () => length(ALONG);
const tailWidth = () => length({ least: "5 mm", most: "1 m" });
const tailDepth = () => length({ least: "5 mm", most: "0.5 m" });

const station: z.ZodMiniType<StationFile> = fields("a station", {
  fromTail: z.exactOptional(along()),
  fromNose: z.exactOptional(along()),
  left: z.exactOptional(length(HALF_WIDTH)),
  right: z.exactOptional(length(HALF_WIDTH)),
  width: z.exactOptional(length(WIDTH)),
  thickness: z.exactOptional(length({ least: "0 mm", most: "0.3 m" })),
  rocker: z.exactOptional(length({ least: "0 mm", most: "0.6 m" })),
});

const TAILS = ["square", "squash", "round", "pin", "swallow", "diamond"] as const;
const tail: z.ZodMiniType<TailFile> = z.discriminatedUnion(
  "kind",
  [
    fields("a square tail", { kind: z.literal("square"), width: tailWidth() }),
    fields("a squash tail", { kind: z.literal("squash"), width: tailWidth() }),
    fields("a round tail", { kind: z.literal("round") }),
    fields("a pin tail", { kind: z.literal("pin") }),
    fields("a swallow tail", { kind: z.literal("swallow"), width: tailWidth(), depth: tailDepth() }),
    fields("a diamond tail", { kind: z.literal("diamond"), width: tailWidth(), depth: tailDepth() }),
  ],
  { error: describeKind("a tail", TAILS) },
);

const BOTTOMS = ["flat", "concave", "vee"] as const;
const depth = () => length(BOTTOM_DEPTH);
const bottom = z.discriminatedUnion(
  "kind",
  [
    fields("a flat bottom", { kind: z.literal("flat") }),
    fields("a concave bottom", { kind: z.literal("concave"), depth: depth() }),
    fields("a vee bottom", { kind: z.literal("vee"), depth: depth() }),
  ],
  { error: describeKind("a bottom", BOTTOMS) },
);
const placedBottom = z.discriminatedUnion(
  "kind",
  [
    fields("a flat bottom of several", { fromTail: along(), kind: z.literal("flat") }),
    fields("a concave bottom of several", { fromTail: along(), kind: z.literal("concave"), depth: depth() }),
    fields("a vee bottom of several", { fromTail: along(), kind: z.literal("vee"), depth: depth() }),
  ],
  { error: describeKind("a bottom", BOTTOMS) },
);

const sectionShape = {
  apex: plainNumber("apex", 0, 1),
  deckFullness: plainNumber("deckFullness", 1, 50),
  bottomFullness: plainNumber("bottomFullness", 1, 50),
  bottom: z.exactOptional(
    z.union(
      [
        bottom,
        listOf(placedBottom, "bottoms", 50).check(
          z.minLength(1, { error: "a list of bottoms needs one at least" }),
        ),
      ],
      {
        error: 'write one bottom, { … }, or a list of them, [ … ], each with its "fromTail"',
      },
    ),
  ),
};
const section = fields("a section", sectionShape);
const placedSection = fields("a section of several", { fromTail: along(), ...sectionShape });

export const surveySchema: z.ZodMiniType<SurveyFile> = fields("the survey", {
  length: length({ least: "0.3 m", most: "5 m" }),
  lengthBy: z.exactOptional(oneOf(["tape", "straight"])),
  stationsBy: z.exactOptional(oneOf(["tape", "straight"])),
  tape: z.exactOptional(length({ least: "0.05 mm", most: "20 mm" })),
  halfWidthsAt: z.exactOptional(oneOf(["apex", "bottom-edge"])),
  twist: z.exactOptional(quantity("angle", { least: "-20 deg", most: "20 deg" })),
  nose: fields("the nose", { kind: oneOf(["pointed", "round"]) }),
  tail,
  stations: listOf(station, "stations", 200),
  section: z.exactOptional(
    z.union(
      [
        section,
        listOf(placedSection, "sections", 50).check(
          z.minLength(1, { error: "a list of sections needs one at least" }),
        ),
      ],
      {
        error: 'write one section, { … }, or a list of them, [ … ], each with its "fromTail"',
      },
    ),
  ),
});

function describeKind(what: string, kinds: readonly string[]) {
  return (issue: { readonly code?: string | undefined; readonly input?: unknown }): string => {
    const { input } = issue;
    if (typeof input !== "object" || input === null || Array.isArray(input)) {
      const need = `${what} is an object, { … }, with its "kind"`;
      return input === undefined ? `missing: ${need}` : need;
    }
    return describeOneOf("kind" in input ? input.kind : undefined, kinds);
  };
}
