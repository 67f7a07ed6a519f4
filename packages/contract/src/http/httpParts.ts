import { z } from "zod";
import { planSchema } from "../plan/planSchema";
import { boardFileSchema } from "../schema/boardFileSchema";
import { clothSchema, fillerSchema, foamSchema, tintSchema, woodSchema } from "../schema/clothSchema";
import { finsSchema } from "../schema/finsSchema";
import { resinSchema } from "../schema/materialsSchema";
import { recordEntrySchema } from "../schema/recordSchema";
import { priceSchema, rollSchema } from "../schema/shopSchema";
import { SHELVES } from "../shelf/readShelfItem";
import { accessParts } from "./accessParts";
import type { HttpParts } from "./HttpCall";
import { sheetAskedSchema } from "./sheetAskedSchema";

const text = () => z.string();
const orNone = (schema: z.ZodType) => z.union([schema, z.null()]);
const time = () => z.string().meta({ format: "date-time" });
const count = () => z.int().min(0);
const hash = () => z.string().regex(/^[0-9a-f]{64}$/);
const revision = () => z.string().regex(/^[0-9a-f]{32}$/);

const summary = {
  id: text(),
  revision: revision(),
  name: text(),
  rider: orNone(text()),
  length: orNone(text()),
  tail: orNone(text()),
  fins: orNone(text()),
  readable: z.boolean(),
};
const photo = z.strictObject({
  hash: hash(),
  type: z.enum(["image/jpeg", "image/png", "image/webp"]),
  sizeBytes: count(),
  keptAt: time(),
  device: text(),
});
const sheet = z.strictObject({
  id: text(),
  boardVersion: count(),
  planHash: hash(),
  pdfHash: hash(),
  issuedAt: time(),
  device: text(),
  engine: text(),
});
const keptEntry = z.strictObject({
  id: text(),
  place: count(),
  receivedAt: time(),
  device: text(),
  entry: recordEntrySchema,
});
const shelfRecord = z.union([
  resinSchema,
  clothSchema,
  foamSchema,
  woodSchema,
  fillerSchema,
  tintSchema,
  priceSchema,
  rollSchema,
  z.strictObject({ name: text(), fins: finsSchema }),
]);
const shelved = {
  shelf: z.enum(SHELVES),
  id: text(),
  revision: revision(),
  version: count(),
};
const shelfVersion = z.strictObject({
  ...shelved,
  savedAt: time(),
  device: text(),
  record: orNone(shelfRecord),
});

/** What goes over the interface, by name. */
export const httpParts: HttpParts = {
  BoardFile: boardFileSchema,
  Plan: planSchema,
  RecordEntry: recordEntrySchema,
  ShelfRecord: shelfRecord,
  SheetAsked: sheetAskedSchema,
  Health: z.strictObject({ status: z.enum(["ok", "full", "read-only", "away"]), version: text() }),
  Boards: z.strictObject({ boards: z.array(z.strictObject(summary)) }),
  BoardsPutAway: z.strictObject({ boards: z.array(z.strictObject({ ...summary, putAwayAt: time() })) }),
  BoardKept: z.strictObject({ id: text(), revision: revision(), version: count(), added: z.array(text()) }),
  BoardPutAway: z.strictObject({ id: text(), putAwayAt: time() }),
  Versions: z.strictObject({
    versions: z.array(
      z.strictObject({
        version: count(),
        revision: revision(),
        savedAt: time(),
        device: text(),
        engine: text(),
      }),
    ),
  }),
  Journal: z.strictObject({ entries: z.array(keptEntry) }),
  KeptEntry: keptEntry,
  Photos: z.strictObject({ photos: z.array(photo) }),
  Photo: photo,
  Sheets: z.strictObject({ sheets: z.array(sheet) }),
  Sheet: sheet,
  Shelf: z.strictObject({ records: z.array(shelfVersion) }),
  ShelfKept: z.strictObject(shelved),
  ShelfVersions: z.strictObject({ versions: z.array(shelfVersion) }),
  OpenApi: z.looseObject({ openapi: z.literal("3.1.1") }),
  JsonSchema: z.looseObject({ $schema: text(), $id: text() }),
  Problem: z.looseObject({
    type: text(),
    title: text(),
    status: z.int().min(400).max(599),
    detail: text(),
    problems: z
      .array(
        z.strictObject({
          path: text(),
          read: text(),
          message: text(),
          // The message in parts, as a finding of the plan has its own.
          says: z.array(z.unknown()),
          line: count().optional(),
        }),
      )
      .optional(),
    state: z.enum(["full", "read-only", "away"]).optional(),
  }),
  ...accessParts,
};
