import { lazy, Suspense } from "react";
import { useTell } from "../settings/useTell";
import { Fold } from "../shared/Fold";
import { BlankFields } from "./BlankFields";
import { FaceFields } from "./FaceFields";
import type { GlassForm } from "./GlassForm";
import { OwnMaterials } from "./OwnMaterials";
import { PatchFields } from "./PatchFields";
import { PriceFields } from "./PriceFields";
import { ScheduleFields } from "./ScheduleFields";
import { SeldomFields } from "./SeldomFields";

const ShelfPart = lazy(() => import("../shelf/ShelfPart"));

/** A lay-up to begin with, chosen by a touch and never by itself: 4 oz below, 4 + 4 oz above. */
const BEGINNING = { bottom: { layers: ["e-136"] }, deck: { layers: ["e-136", "e-136"] } };

/** Everything that is chosen about blank, cloth and resin; what is seldom changed is folded. */
export function LayupForm({ form }: { readonly form: GlassForm }) {
  const t = useTell();
  const { file, plan, edit } = form;
  return (
    <div className="layup-form">
      <BlankFields form={form} />
      {file.glass === undefined ? (
        <p className="form-acts">
          <button
            type="button"
            onClick={() => edit(["glass"], BEGINNING)}
          >{t`begin the lay-up: 4 oz on the bottom, 4 + 4 oz on the deck`}</button>
        </p>
      ) : (
        <>
          <ScheduleFields form={form} />
          <div className="pair">
            <FaceFields form={form} face="bottom" />
            <FaceFields form={form} face="deck" />
          </div>
          <Fold title={t`Patches`} isFolded={(file.glass.patches ?? []).length === 0}>
            <PatchFields form={form} />
          </Fold>
          <Fold title={t`Another resin for a coat, fillers, tint`} isFolded>
            <SeldomFields form={form} />
          </Fold>
        </>
      )}
      <Fold title={t`Materials of your own`} isFolded>
        <OwnMaterials form={form} />
      </Fold>
      {plan.cost !== null && (
        <Fold title={t`Rolls and prices`} isFolded>
          <PriceFields form={form} cost={plan.cost} />
        </Fold>
      )}
      <Fold title={t`The shop's shelf`} isFolded isMadeOpen>
        <Suspense fallback={<p aria-busy="true" />}>
          <ShelfPart form={form} />
        </Suspense>
      </Fold>
    </div>
  );
}
