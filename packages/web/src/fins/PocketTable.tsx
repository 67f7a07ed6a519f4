import { duration, length, type Plan, volume } from "@lapline/engine";
import { finName, readNoLoadS } from "@lapline/present";
import { ENGLISH } from "../settings/english";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";
import type { Finset } from "./FinsForm";

const SURFACES = { foam: "the foam", laminate: "the laminate", fill: "the fill coat" } as const;

/** How each box is let in, or each fin glassed on, and how long it is left alone. */
export function PocketTable({ plan, finset }: { plan: Plan; finset: Finset }) {
  const { boxes, glassedOn } = finset.verify;
  const cureS = boxes[0]?.cureBeforeLoadS ?? glassedOn[0]?.cureBeforeLoadS;
  if (cureS === undefined) return null;
  return (
    <Fold title={boxes.length > 0 ? "Pockets" : "Glassed on"}>
      {boxes.length > 0 ? <BoxTable finset={finset} /> : <GlassedOnTable finset={finset} />}
      <p>
        No load on them for <Amount of={duration(readNoLoadS(plan, "boxes", cureS))} />, or as the resin's
        sheet asks where that is longer.
      </p>
    </Fold>
  );
}

function BoxTable({ finset: { verify } }: { finset: Finset }) {
  const { units } = useSettings();
  return (
    <FactTable
      caption={`Depth from ${SURFACES[verify.surface]}; frame's opening for a bit with a bearing`}
      heads={[
        "fin",
        "long",
        "wide",
        "deep",
        "thickest bit",
        "proud",
        "foam left",
        "resin and filler",
        "cloth over it",
      ]}
      rows={verify.boxes.map((box) => ({
        id: box.id,
        name: finName(box.id, ENGLISH),
        cells: [
          <Size key="long" ofM={box.cutOut.lengthM} />,
          <Size key="wide" ofM={box.cutOut.widthM} />,
          <Size key="deep" ofM={box.cutOut.depthM} />,
          <Size key="bit" ofM={box.bits.find(({ id }) => id === units)?.diameterM ?? null} />,
          <Size key="proud" ofM={box.proudM} />,
          <Size key="foam" ofM={box.foamOverCutM} />,
          <span key="resin">
            <Amount of={volume(box.fillVolumeM3)} />
            <span className="quiet change">
              <Amount of={volume(box.fillVolumeLowM3)} /> to <Amount of={volume(box.fillVolumeHighM3)} />
            </span>
          </span>,
          <Patch key="patch" size={box.patch} />,
        ],
      }))}
    />
  );
}

function GlassedOnTable({ finset: { verify } }: { finset: Finset }) {
  return (
    <FactTable
      caption="Fillets, tacks and cloth"
      heads={["fin", "fillet radius", "resin and filler", "tacks at both ends", "cloth, each side"]}
      rows={verify.glassedOn.map((fin) => ({
        id: fin.id,
        name: finName(fin.id, ENGLISH),
        cells: [
          <Size key="radius" ofM={fin.filletRadiusM} />,
          <Amount key="resin" of={volume(fin.filletVolumeM3)} />,
          <Size key="tacks" ofM={fin.tackLengthM} />,
          <Patch key="cloth" size={fin.patch} />,
        ],
      }))}
    />
  );
}

const Size = ({ ofM }: { ofM: number | null }) => <Amount of={ofM === null ? null : length(ofM, "fine")} />;

function Patch({ size }: { size: { readonly lengthM: number; readonly widthM: number } | null }) {
  if (size === null) return "none";
  return (
    <>
      <Size ofM={size.lengthM} /> by <Size ofM={size.widthM} />
    </>
  );
}
