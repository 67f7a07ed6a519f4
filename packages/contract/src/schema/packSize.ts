import { parseQuantity, say } from "@lapline/engine";
import { z } from "zod/mini";
import type { QuantityText } from "../file/QuantityText";
import { issueText } from "../reading/issueSays";

const MOST_SI = 10_000;

/** What is in a pack: a mass, a volume, or a length of cloth, with its unit. */
export function packSize(): z.ZodMiniType<QuantityText> {
  const need = issueText(say`write what is in the pack with its unit, such as "5 kg", "1 L" or "50 m"`);
  return z.string({ error: need }).check(({ value, issues }) => {
    const reading = readPack(value);
    const isSize = reading !== null && reading.valueSi > 0 && reading.valueSi <= MOST_SI;
    if (!isSize) issues.push({ code: "custom", message: need, input: value });
  });
}

/** The pack in SI, by the one kind of quantity that its unit belongs to; null where it is none of the three. */
export function readPack(
  text: QuantityText,
): { readonly dimension: "mass" | "volume" | "length"; readonly valueSi: number } | null {
  for (const dimension of ["mass", "volume", "length"] as const) {
    const parsed = parseQuantity(text, dimension);
    if (parsed.ok) return { dimension, valueSi: parsed.value };
  }
  return null;
}
