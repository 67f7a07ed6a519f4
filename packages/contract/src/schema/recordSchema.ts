import { GRITS, say } from "@lapline/engine";
import { z } from "zod/mini";
import type { RecordEntryFile } from "../file/RecordEntryFile";
import { issueText } from "../reading/issueSays";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { ALONG } from "./surveySchema";
import { describeOneOf, entryId, id, listOf, oneOf, wallTime } from "./words";

export const MOST_ENTRIES = 2000;

const KINDS = ["done", "weighed", "mixed", "touched", "sand-through", "film", "dust", "struck"] as const;

const anyEntry = { id: entryId(), at: z.exactOptional(wallTime()), corrects: z.exactOptional(entryId()) };
const coat = () => id(say`a coat's id`, "laminate-bottom");
const grit = () => oneOf(GRITS);
const cup = () => quantity("mass", { least: "0.1 g", most: "20 kg" });

export const recordEntrySchema: z.ZodMiniType<RecordEntryFile> = z.discriminatedUnion(
  "kind",
  [
    fields(say`an entry of a step done`, {
      ...anyEntry,
      kind: z.literal("done"),
      step: id(say`a step's id`, "laminate-bottom"),
    }),
    fields(say`an entry of a weighing`, {
      ...anyEntry,
      kind: z.literal("weighed"),
      after: id(say`a step's id`, "laminate-bottom"),
      mass: quantity("mass", { least: "100 g", most: "50 kg" }),
    }),
    fields(say`an entry of a cup mixed`, {
      ...anyEntry,
      kind: z.literal("mixed"),
      coat: coat(),
      base: cup(),
      hardener: cup(),
      resinTemperature: z.exactOptional(quantity("temperature", { least: "0 C", most: "60 C" })),
    }),
    fields(say`an entry of a fingertip test`, {
      ...anyEntry,
      kind: z.literal("touched"),
      coat: coat(),
      feels: oneOf(["wet", "strings", "leathery", "hard"]),
    }),
    fields(say`an entry of a sand-through`, {
      ...anyEntry,
      kind: z.literal("sand-through"),
      face: oneOf(["deck", "bottom"]),
      side: oneOf(["left", "right"]),
      fromTail: quantity("length", ALONG),
      fromCentreline: quantity("length", { least: "0 mm", most: "0.75 m" }),
      size: quantity("length", { least: "0.5 mm", most: "1 m" }),
      shows: oneOf(["shine", "weave", "glass", "foam"]),
    }),
    fields(say`an entry of a film gauge`, {
      ...anyEntry,
      kind: z.literal("film"),
      zone: id(say`a zone's id`, "rail-left"),
      film: quantity("length", { least: "0 mm", most: "2 mm" }),
      after: z.exactOptional(grit()),
    }),
    fields(say`an entry of sanding dust`, {
      ...anyEntry,
      kind: z.literal("dust"),
      face: oneOf(["deck", "bottom"]),
      mass: quantity("mass", { least: "0.1 g", most: "2 kg" }),
      after: grit(),
    }),
    fields(say`an entry that strikes another`, {
      ...anyEntry,
      kind: z.literal("struck"),
      corrects: entryId(),
    }),
  ],
  {
    error: ({ input }) => {
      if (typeof input !== "object" || input === null)
        return issueText(say`an entry is an object, { … }, with "id" and "kind"`);
      return issueText(describeOneOf("kind" in input ? input.kind : undefined, KINDS));
    },
  },
);

export const recordSchema = listOf(recordEntrySchema, say`entries of the record`, MOST_ENTRIES);
