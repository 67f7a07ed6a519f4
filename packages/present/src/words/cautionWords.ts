import { CAUTIONS } from "@lapline/engine";

const ALL: Readonly<Record<string, { readonly text: string } | undefined>> = CAUTIONS;

/** The cautions that a part of the plan names, in full. */
export function cautionWords(ids: readonly string[]): readonly string[] {
  return ids.flatMap((id) => ALL[id]?.text ?? []);
}
