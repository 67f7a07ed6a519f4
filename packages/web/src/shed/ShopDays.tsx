import { shopDaysDrawing, wallTimeText } from "@lapline/present";
import { useCallback, useMemo } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fold } from "../shared/Fold";
import { SharedStands, type ShopBoardOnPage } from "./SharedStands";

/** The days of all boards as bars, and each one's first surf in words. */
export function ShopDays({ boards }: { readonly boards: readonly ShopBoardOnPage[] }) {
  const t = useTell();
  const plans = useMemo(() => boards.map(({ plan }) => plan), [boards]);
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => shopDaysDrawing(plans, { reader, widthMm }), [plans, reader]);
  const surfs = plans.flatMap(({ name, water }) =>
    water.firstSurfAt === null || water.firstSurfAt.startsWith("day ")
      ? []
      : [{ name, at: water.firstSurfAt }],
  );
  if (surfs.length === 0) return null;
  return (
    <Fold title={t`Days`} isFolded>
      <SheetDrawing
        title={t`The days of all boards`}
        desc={t`A row for each board; its first surf stands below in words.`}
        draw={draw}
      />
      <ul className="first-surfs">
        {surfs.map(({ name, at }) => (
          <li key={name}>{t`${name}: first surf ${wallTimeText(at, reader)}`}</li>
        ))}
      </ul>
      <SharedStands boards={boards} />
    </Fold>
  );
}
