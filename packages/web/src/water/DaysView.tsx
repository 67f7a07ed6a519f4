import type { BoardFile } from "@lapline/contract";
import { type Plan, SHOP_DEFAULTS } from "@lapline/engine";
import { calendarDays, calendarDrawing, tell, waitsExplained } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Fold } from "../shared/Fold";

/** The days as bars, and the same in words, a line for each. */
export function DaysView({ file, plan }: { readonly file: BoardFile; readonly plan: Plan }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { from, to } = file.shop?.hours ?? SHOP_DEFAULTS.hours;
  const draw = useCallback(
    (widthMm: number) => calendarDrawing(plan, { reader, widthMm, hours: { from, to } }),
    [plan, reader, from, to],
  );
  if (plan.calendar === null || plan.calendar.every(({ startsAt }) => startsAt === null)) return null;
  return (
    <>
      <h3>{t`Days`}</h3>
      <p className="quiet">{waitsExplained(reader)}</p>
      <SheetDrawing
        title={t`${plan.name}, days to the first surf`}
        desc={t`A bar for each step in order of time; the same stands below in words.`}
        draw={draw}
      />
      <Fold title={t`The days in words`} isFolded>
        {calendarDays(plan, reader).map(({ day, lines }) => (
          <section key={day} className="day">
            <h4>{day}</h4>
            <ul>
              {lines.map(({ clock, words, more, done }) => (
                <li key={`${clock} ${words}`} className={done ? "done" : undefined}>
                  <b>{clock}</b> {[words, ...more].join("; ")}
                </li>
              ))}
            </ul>
          </section>
        ))}
      </Fold>
    </>
  );
}
