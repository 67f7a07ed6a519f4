import { type Phrase, say } from "@lapline/engine";
import { z } from "zod/mini";
import type { GelPointFile, MaterialsFile, RecoatFile, ResinFile } from "../file/MaterialsFile";
import { issueText } from "../reading/issueSays";
import { readRatio } from "../reading/readRatio";
import { clothSchema, fillerSchema, foamSchema, tintSchema, woodSchema } from "./clothSchema";
import { fields } from "./fields";
import { quantity } from "./quantity";
import { describeOneOf, id, listOf, oneOf, plainNumber, plainText, yesOrNo } from "./words";

const KINDS = ["peroxide", "two-part", "sunlight"] as const;
/** The least share of hardener that any resin sets with; less is a resin read the other way round. */
const LEAST_HARDENER = 0.05;

const time = (least: string, most: string) => quantity("duration", { least, most });
const resinAir = () => quantity("temperature", { least: "0 C", most: "60 C" });
const dose = () => quantity("fraction", { least: "0.1 %", most: "4 %" });
const density = () => quantity("density", { least: "800 kg/m3", most: "1400 kg/m3" });

const recoat: z.ZodMiniType<RecoatFile> = fields(say`the recoat window`, {
  until: time("1 h", "30 d"),
  at: resinAir(),
});

const anyResin = {
  name: z.exactOptional(plainText(say`the resin's name`)),
  density: z.exactOptional(density()),
  curedDensity: z.exactOptional(density()),
  leastTemperature: z.exactOptional(quantity("temperature", { least: "0 C", most: "40 C" })),
  recoat: z.exactOptional(recoat),
};
const withStyrene = {
  styrene: z.exactOptional(quantity("fraction", { least: "5 %", most: "60 %" })),
  wax: z.exactOptional(
    z.union([z.literal("none"), quantity("fraction", { least: "0.1 %", most: "10 %" })], {
      error: issueText(
        say`write wax solution by volume, such as "2 %", or "none" where the resin has its wax or needs none`,
      ),
    }),
  ),
};

const gelPoint: z.ZodMiniType<GelPointFile> = fields(say`a line of the gel table`, {
  temperature: resinAir(),
  dose: dose(),
  gels: time("1 min", "24 h"),
});

/** Base to hardener as a sheet writes it; more hardener than base is read the wrong way round. */
function ratio(by: "mass" | "volume"): z.ZodMiniType<string> {
  const need =
    by === "mass"
      ? say`write base to hardener by mass as on the sheet, such as "100:45"`
      : say`write base to hardener by volume as on the sheet, such as "100:45"`;
  return z
    .string({ error: issueText(need) })
    .check(({ value, issues }) => {
      const says = describeRatio(value, need);
      if (says !== null) issues.push({ code: "custom", message: issueText(says), input: value });
    })
    .register(z.globalRegistry, {
      description: `base to hardener by ${by}`,
      examples: ["100:45"],
      pattern: "^\\s*[0-9.]+\\s*:",
    });
}

function describeRatio(text: string, need: Phrase): Phrase | null {
  const read = readRatio(text);
  if (read === null) return need;
  const { base, hardener } = read;
  if (hardener > base)
    return say`more hardener than base: base stands first, so was "${`${hardener}:${base}`}" meant?`;
  if (hardener < LEAST_HARDENER * base) return say`so little hardener sets no two-part resin; ${need}`;
  return null;
}

export const resinSchema: z.ZodMiniType<ResinFile> = z.discriminatedUnion(
  "kind",
  [
    fields(say`a resin cured by peroxide`, {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("peroxide"),
      dose: fields(say`the range of the dose`, { least: dose(), most: dose() }),
      gel: listOf(gelPoint, say`lines of the gel table`, 200).check(
        z.minLength(1, {
          error: issueText(
            say`write at least one line of the sheet's gel table, or one cup timed in the shop`,
          ),
        }),
      ),
      promoter: z.exactOptional(oneOf(["in-resin", "to-add"])),
      hardenerDensity: z.exactOptional(density()),
    }),
    fields(say`a two-part resin`, {
      ...anyResin,
      kind: z.literal("two-part"),
      ratioByMass: z.exactOptional(ratio("mass")),
      ratioByVolume: z.exactOptional(ratio("volume")),
      potLife: fields(say`the pot life`, {
        lasts: time("2 min", "24 h"),
        mass: quantity("mass", { least: "10 g", most: "5 kg" }),
        temperature: resinAir(),
      }),
      hardenerDensity: z.exactOptional(density()),
      blushes: z.exactOptional(yesOrNo()),
    }),
    fields(say`a resin cured by sunlight`, {
      ...anyResin,
      ...withStyrene,
      kind: z.literal("sunlight"),
      exposure: z.exactOptional(
        fields(say`the exposure`, {
          uvIndex: plainNumber(say`UV index`, 1, 15),
          takes: time("10 s", "8 h"),
        }),
      ),
    }),
  ],
  {
    error: ({ input }) => {
      if (typeof input !== "object" || input === null)
        return issueText(say`a resin is an object, { … }, with "kind"`);
      return issueText(describeOneOf("kind" in input ? input.kind : undefined, KINDS));
    },
  },
);

function own<T>(what: Phrase, ids: Phrase, example: string, record: z.ZodMiniType<T>) {
  return z.exactOptional(
    z.record(id(what, example), record, {
      error: issueText(say`write an object, { … }, of ${ids} by an id of your own, such as "${example}"`),
    }),
  );
}

export const materialsSchema: z.ZodMiniType<MaterialsFile> = fields(say`the materials`, {
  resins: own(say`a resin's id`, say`resins`, "my-polyester", resinSchema),
  cloths: own(say`a cloth's id`, say`cloths`, "carbon-strip-200", clothSchema),
  foams: own(say`a foam's id`, say`foams`, "my-foam", foamSchema),
  woods: own(say`a wood's id`, say`woods`, "my-wood", woodSchema),
  fillers: own(say`a filler's id`, say`fillers`, "my-filler", fillerSchema),
  tints: own(say`a tint's id`, say`tints`, "my-blue", tintSchema),
});
