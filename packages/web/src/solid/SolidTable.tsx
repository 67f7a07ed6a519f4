import { length, type Plan } from "@lapline/engine";
import { showQuantity, skinGroups, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { type FactRow, FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";
import type { Colouring } from "./Colouring";
import type { SolidPlace } from "./SolidPlace";
import { skinOf } from "./skinOf";

interface SolidTableProps {
  readonly plan: Plan;
  readonly colouring: Colouring;
  /** Instead of the solid, where the browser draws none. */
  readonly isOpen: boolean;
}

const PLACES = 12;

/** The same values by place, for whoever reads rather than looks. */
export function SolidTable({ plan, colouring, isOpen }: SolidTableProps) {
  const t = tell(useSettings().reader);
  const table =
    colouring.id === "skin" ? <SkinRows plan={plan} /> : <AlongRows plan={plan} colouring={colouring} />;
  if (isOpen) return table;
  return (
    <Fold title={t`The same as a table`} isFolded>
      {table}
    </Fold>
  );
}

function AlongRows({ plan, colouring }: Omit<SolidTableProps, "isOpen">) {
  const { reader } = useSettings();
  const t = tell(reader);
  const lengthM = plan.shape?.lengthM ?? 0;
  const isFilm = colouring.id === "film";
  const places = isFilm
    ? (plan.sanding?.places ?? []).filter(({ side }) => side === "left").map(({ fromTailM }) => fromTailM)
    : Array.from({ length: PLACES - 1 }, (_, i) => ((i + 1) / PLACES) * lengthM);
  const at = (fromTailM: number, side: SolidPlace["side"]): number =>
    colouring.valueAt({ fromTailM, side, face: "deck", fromEdgeM: 0 });
  const rows = places.map((fromTailM, i): FactRow => {
    return {
      id: String(i),
      name: <Amount of={length(fromTailM, "coarse")} />,
      cells: (["left", "right"] as const).map((side) => (
        <Signed key={side} valueM={at(fromTailM, side)} isFilm={isFilm} />
      )),
    };
  });
  return (
    <FactTable
      caption={isFilm ? t`Film left at the rails` : t`Each side against the other`}
      heads={[t`place from the tail`, t`left`, t`right`]}
      rows={rows}
    />
  );
}

/** A length with what its sign means. */
function Signed({ valueM, isFilm }: { valueM: number; isFilm: boolean }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const size = showQuantity(length(Math.abs(valueM)), { ...reader, units: "mm" });
  if (isFilm) return valueM < 0 ? t`through, ${size} short` : size;
  return valueM < 0 ? t`${size} narrower` : t`${size} fuller`;
}

function SkinRows({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <FactTable
      caption={t`Thickness of the skin`}
      heads={[t`skin at`, t`skin`, t`laminate`, t`fill`, t`gloss`]}
      rows={skinGroups(plan.layup?.zones ?? [], reader).map(({ names, zone }) => ({
        id: zone.id,
        name: names.join(", "),
        cells: [skinOf(zone), zone.laminateThicknessM, zone.fillThicknessM, zone.glossThicknessM].map(
          // biome-ignore lint/suspicious/noArrayIndexKey: the table's columns stand still
          (valueM, i) => <Amount key={i} of={length(valueM)} />,
        ),
      }))}
    />
  );
}
