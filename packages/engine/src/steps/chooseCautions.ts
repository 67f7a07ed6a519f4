import { CAUTIONS, type CautionId, RESIN_CAUTIONS } from "../constants/cautions";
import type { Resin } from "../constants/Resin";
import type { GlassInput } from "../layup/GlassInput";
import type { LayupPlan } from "../layup/LayupPlan";
import { findResin } from "../materials/listResins";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { Choices } from "./Choices";
import type { StepRow } from "./StepRow";

export interface GlassAndResins {
  readonly input: GlassInput | undefined;
  readonly layup: LayupPlan | null;
  readonly materials: MaterialsInput | undefined;
}

/** The usual cautions at a step, in words: the step's own, and those of the resin that is opened there. */
export function chooseCautions(row: StepRow, choices: Choices, glass: GlassAndResins): readonly string[] {
  const ids: CautionId[] = [...ownCautions(row, choices)];
  if (row.labour.kind === "coat") {
    const coat = row.labour.coat;
    for (const kind of resinKinds(coat, glass)) ids.push(...RESIN_CAUTIONS[kind]);
    if (glass.layup?.coats.some(({ id, filler }) => id === coat && filler !== null)) ids.push("filler-dust");
    if (choices.isPolystyrene && row.labour.spread === "box") ids.push("eps-pour");
  }
  if (ids.length > 0) ids.push("sheet");
  return [...new Set(ids)].map((id) => CAUTIONS[id].text);
}

/** A board without a plug has none to pull, and fins that are glassed on are not routed in. */
function ownCautions({ cautions }: StepRow, { boxes, plug }: Choices): readonly CautionId[] {
  return cautions
    .filter((id) => id !== "leash-plug" || plug !== null)
    .map((id) => (id === "mark-and-verify" && boxes === "glassed-on" ? "mark-and-stand" : id));
}

/** The kind of the coat's resin; where it is not known every kind that the board names, and else all of them. */
function resinKinds(coat: string, glass: GlassAndResins): readonly Resin["kind"][] {
  const own = glass.layup?.coats.find(({ id }) => id === coat)?.resin;
  const { resin, boxResin } = glass.input ?? {};
  const named = typeof resin === "string" ? [resin] : Object.values(resin ?? {});
  const ids = own !== undefined ? [own] : [...named, ...(boxResin === undefined ? [] : [boxResin])];
  const kinds = ids.flatMap((id) => findResin(glass.materials, id)?.kind ?? []);
  return kinds.length > 0 ? kinds : ["peroxide", "two-part", "sunlight"];
}
