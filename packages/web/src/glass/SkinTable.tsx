import { arealMass, fraction, length, type Plan } from "@lapline/engine";
import { skinGroups, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";

type Zone = NonNullable<Plan["layup"]>["zones"][number];

/** The skin by zone: thickness, how much of it is fibre, and what it weighs; zones that come out alike share a row. */
export function SkinTable({ zones }: { zones: readonly Zone[] }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <FactTable
      caption={t`Skin by zone`}
      heads={[t`skin at`, t`glass`, t`fibre`, t`weighs`, t`fill`]}
      rows={skinGroups(zones, reader).map(({ names, zone }) => ({
        id: zone.id,
        name: names.join(", "),
        cells: [
          <Amount
            key="glass"
            of={length(zone.laminateThicknessM)}
            why={`layup.zones[${zone.id}].laminateThicknessM`}
          />,
          <Amount
            key="fibre"
            of={fraction(zone.fibreVolumeFraction)}
            why={`layup.zones[${zone.id}].fibreVolumeFraction`}
          />,
          <Amount
            key="weighs"
            of={arealMass(zone.skinArealMassKgM2)}
            why={`layup.zones[${zone.id}].skinArealMassKgM2`}
          />,
          <Amount
            key="fill"
            of={length(zone.fillThicknessM)}
            why={`layup.zones[${zone.id}].fillThicknessM`}
          />,
        ],
      }))}
    />
  );
}
