import { duration, length, type Plan, volume } from "@lapline/engine";
import { finName, readNoLoadS } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";
import type { Finset } from "./FinsForm";

/** How each box is let in, or each fin glassed on, and how long it is left alone. */
export function PocketTable({ plan, finset }: { plan: Plan; finset: Finset }) {
  const t = useTell();
  const { boxes, glassedOn } = finset.verify;
  const cureS = boxes[0]?.cureBeforeLoadS ?? glassedOn[0]?.cureBeforeLoadS;
  if (cureS === undefined) return null;
  return (
    <Fold title={boxes.length > 0 ? t`Pockets` : t`Glassed on`}>
      {boxes.length > 0 ? <BoxTable finset={finset} /> : <GlassedOnTable finset={finset} />}
      <p>
        {t`No load on them for ${duration(readNoLoadS(plan, "boxes", cureS))}, or as the resin's sheet asks where that is longer.`}
      </p>
    </Fold>
  );
}

function BoxTable({ finset: { verify } }: { finset: Finset }) {
  const t = useTell();
  const captions = {
    foam: t`Depth from the foam; frame's opening for a bit with a bearing`,
    laminate: t`Depth from the laminate; frame's opening for a bit with a bearing`,
    fill: t`Depth from the fill coat; frame's opening for a bit with a bearing`,
  };
  const { reader } = useSettings();
  const { units } = useSettings();
  return (
    <FactTable
      caption={captions[verify.surface]}
      heads={[
        t`fin`,
        t`long`,
        t`wide`,
        t`deep`,
        t`thickest bit`,
        t`proud`,
        t`foam left`,
        t`resin and filler`,
        t`cloth over it`,
      ]}
      rows={verify.boxes.map((box) => ({
        id: box.id,
        name: finName(box.id, reader),
        cells: [
          <Size key="long" ofM={box.cutOut.lengthM} why={`boxes[${box.id}].cutOut.lengthM`} />,
          <Size key="wide" ofM={box.cutOut.widthM} why={`boxes[${box.id}].cutOut.widthM`} />,
          <Size key="deep" ofM={box.cutOut.depthM} why={`boxes[${box.id}].cutOut.depthM`} />,
          <Size
            key="bit"
            ofM={box.bits.find(({ id }) => id === units)?.diameterM ?? null}
            why={`boxes[${box.id}].bits[${units}].diameterM`}
          />,
          <Size key="proud" ofM={box.proudM} why={`boxes[${box.id}].proudM`} />,
          <Size key="foam" ofM={box.foamOverCutM} why={`boxes[${box.id}].foamOverCutM`} />,
          <span key="resin">
            <Amount of={volume(box.fillVolumeM3)} why={`finset.verify.boxes[${box.id}].fillVolumeM3`} />
            <span className="quiet change">
              {t`${volume(box.fillVolumeLowM3)} to ${volume(box.fillVolumeHighM3)}`}
            </span>
          </span>,
          <Patch key="patch" size={box.patch} why={`boxes[${box.id}].patch`} />,
        ],
      }))}
    />
  );
}

function GlassedOnTable({ finset: { verify } }: { finset: Finset }) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <FactTable
      caption={t`Fillets, tacks and cloth`}
      heads={[t`fin`, t`fillet radius`, t`resin and filler`, t`tacks at both ends`, t`cloth, each side`]}
      rows={verify.glassedOn.map((fin) => ({
        id: fin.id,
        name: finName(fin.id, reader),
        cells: [
          <Size key="radius" ofM={fin.filletRadiusM} why={`glassedOn[${fin.id}].filletRadiusM`} />,
          <Amount
            key="resin"
            of={volume(fin.filletVolumeM3)}
            why={`finset.verify.glassedOn[${fin.id}].filletVolumeM3`}
          />,
          <Size key="tacks" ofM={fin.tackLengthM} why={`glassedOn[${fin.id}].tackLengthM`} />,
          <Patch key="cloth" size={fin.patch} why={`glassedOn[${fin.id}].patch`} />,
        ],
      }))}
    />
  );
}

const Size = ({ ofM, why }: { ofM: number | null; why: string }) => (
  <Amount of={ofM === null ? null : length(ofM, "fine")} why={`finset.verify.${why}`} />
);

interface PatchProps {
  readonly size: { readonly lengthM: number; readonly widthM: number } | null;
  readonly why: string;
}

function Patch({ size, why }: PatchProps) {
  if (size === null) return "–";
  return (
    <>
      <Size ofM={size.lengthM} why={`${why}.lengthM`} /> × <Size ofM={size.widthM} why={`${why}.widthM`} />
    </>
  );
}
