import { type Phrase, say } from "@lapline/engine";
import { z } from "zod/mini";
import type { StationFile, SurveyFile, TailFile } from "../file/SurveyFile";
import { missingOr } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";
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

const station: z.ZodMiniType<StationFile> = fields(say`a station`, {
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
    fields(say`a square tail`, { kind: z.literal("square"), width: tailWidth() }),
    fields(say`a squash tail`, { kind: z.literal("squash"), width: tailWidth() }),
    fields(say`a round tail`, { kind: z.literal("round") }),
    fields(say`a pin tail`, { kind: z.literal("pin") }),
    fields(say`a swallow tail`, { kind: z.literal("swallow"), width: tailWidth(), depth: tailDepth() }),
    fields(say`a diamond tail`, { kind: z.literal("diamond"), width: tailWidth(), depth: tailDepth() }),
  ],
  { error: describeKind(say`a tail`, TAILS) },
);

const BOTTOMS = ["flat", "concave", "vee"] as const;
const depth = () => length(BOTTOM_DEPTH);
const bottom = z.discriminatedUnion(
  "kind",
  [
    fields(say`a flat bottom`, { kind: z.literal("flat") }),
    fields(say`a concave bottom`, { kind: z.literal("concave"), depth: depth() }),
    fields(say`a vee bottom`, { kind: z.literal("vee"), depth: depth() }),
  ],
  { error: describeKind(say`a bottom`, BOTTOMS) },
);
const placedBottom = z.discriminatedUnion(
  "kind",
  [
    fields(say`a flat bottom of several`, { fromTail: along(), kind: z.literal("flat") }),
    fields(say`a concave bottom of several`, {
      fromTail: along(),
      kind: z.literal("concave"),
      depth: depth(),
    }),
    fields(say`a vee bottom of several`, { fromTail: along(), kind: z.literal("vee"), depth: depth() }),
  ],
  { error: describeKind(say`a bottom`, BOTTOMS) },
);

const sectionShape = {
  apex: plainNumber(say`apex`, 0, 1),
  deckFullness: plainNumber(say`deck fullness`, 1, 50),
  bottomFullness: plainNumber(say`bottom fullness`, 1, 50),
  bottom: z.exactOptional(
    z.union(
      [
        bottom,
        listOf(placedBottom, say`bottoms`, 50).check(
          z.minLength(1, { error: issueText(say`a list of bottoms needs one at least`) }),
        ),
      ],
      {
        error: issueText(say`write one bottom, { … }, or a list of them, [ … ], each with its "fromTail"`),
      },
    ),
  ),
};
const section = fields(say`a section`, sectionShape);
const placedSection = fields(say`a section of several`, { fromTail: along(), ...sectionShape });

export const surveySchema: z.ZodMiniType<SurveyFile> = fields(say`the survey`, {
  length: length({ least: "0.3 m", most: "5 m" }),
  lengthBy: z.exactOptional(oneOf(["tape", "straight"])),
  stationsBy: z.exactOptional(oneOf(["tape", "straight"])),
  tape: z.exactOptional(length({ least: "0.05 mm", most: "20 mm" })),
  halfWidthsAt: z.exactOptional(oneOf(["apex", "bottom-edge"])),
  twist: z.exactOptional(quantity("angle", { least: "-20 deg", most: "20 deg" })),
  nose: fields(say`the nose`, { kind: oneOf(["pointed", "round"]) }),
  tail,
  stations: listOf(station, say`stations`, 200),
  section: z.exactOptional(
    z.union(
      [
        section,
        listOf(placedSection, say`sections`, 50).check(
          z.minLength(1, { error: issueText(say`a list of sections needs one at least`) }),
        ),
      ],
      {
        error: issueText(say`write one section, { … }, or a list of them, [ … ], each with its "fromTail"`),
      },
    ),
  ),
});

function describeKind(what: Phrase, kinds: readonly string[]) {
  return (issue: { readonly code?: string | undefined; readonly input?: unknown }): string => {
    const { input } = issue;
    if (typeof input !== "object" || input === null || Array.isArray(input)) {
      return issueText(missingOr(say`${what} is an object, { … }, with its "kind"`, input));
    }
    return issueText(describeOneOf("kind" in input ? input.kind : undefined, kinds));
  };
}
