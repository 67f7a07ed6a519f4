import type { SheetContext } from "../SheetContext";

/** When a coat may be trimmed, flipped, coated again and sanded, from the hardener going into its last cup; null for other work. */
export function windowTexts(stepId: string, { plan, ledger, t }: SheetContext): readonly string[] | null {
  const coatId = plan.steps?.find(({ id }) => id === stepId)?.coat;
  const clock = plan.mix?.coats.find(({ id }) => id === coatId)?.clock;
  if (clock === undefined || clock === null) return null;
  const show = (key: keyof typeof clock) => ledger.show(`mix.coats[${coatId}].clock.${key}`);
  const { trimFromS, trimUntilS, flipS, recoatFromS, recoatUntilS, sandableS, pullTapeS } = clock;
  return [
    ...(pullTapeS === null ? [] : [t`pull the tape at ${show("pullTapeS")}`]),
    ...(trimFromS === null
      ? []
      : [
          trimUntilS === null
            ? t`trim from ${show("trimFromS")}`
            : t`trim ${show("trimFromS")} – ${show("trimUntilS")}`,
        ]),
    ...(flipS === null ? [] : [t`flip from ${show("flipS")}`]),
    ...(recoatFromS === null
      ? []
      : [
          recoatUntilS === null
            ? t`recoat from ${show("recoatFromS")}`
            : t`recoat ${show("recoatFromS")} – ${show("recoatUntilS")}`,
        ]),
    ...(sandableS === null ? [] : [t`sand from ${show("sandableS")}`]),
  ];
}
