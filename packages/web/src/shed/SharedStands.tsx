import type { ShopCalendar } from "@lapline/engine";
import { asSentence, shopDaysDrawing, tellPhrase, wallTimeText } from "@lapline/present";
import { useCallback, useMemo, useState } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import type { GoodBoard } from "../plan/GoodBoard";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { saveShopIcs } from "./saveShopIcs";
import "./sharedStands.css";
import { canShare, nameApart, plansInShop, surfIn } from "./sharedShop";
import { useSharedShop } from "./useSharedShop";

export interface ShopBoardOnPage extends GoodBoard {
  readonly id: string;
}

const STANDS = ["1", "2", "3", "4", "5", "6"] as const;
/** So many are chosen to begin with: more take longer to lay out than one waits for. */
const FIRST_CHOSEN = 3;

/** Which boards share how many pairs of stands: chosen here, laid out on a touch, with the file that a phone's calendar takes. */
export function SharedStands({ boards }: { readonly boards: readonly ShopBoardOnPage[] }) {
  const t = useTell();
  const { reader } = useSettings();
  const able = useMemo(() => nameApart(boards.filter(({ plan }) => canShare(plan))), [boards]);
  const [stands, setStands] = useState<(typeof STANDS)[number]>("1");
  const [left, setLeft] = useState<ReadonlySet<string>>(
    () => new Set(able.slice(FIRST_CHOSEN).map(({ id }) => id)),
  );
  const { state, start, forget } = useSharedShop();
  const chosen = able.filter(({ id }) => !left.has(id));
  if (able.length < 2) return null;
  const toggle = (id: string) => {
    forget();
    setLeft(
      (before) => new Set(before.has(id) ? [...before].filter((each) => each !== id) : [...before, id]),
    );
  };
  const shop = state.kind === "done" ? state.answer.value : null;
  return (
    <section className="shared-stands" aria-labelledby="shared-stands">
      <h4 id="shared-stands">{t`Boards on shared stands`}</h4>
      <p className="quiet">{t`One crew, and the hours of the first board's shop. A board keeps its stands while hands are on it and until its coat can be turned.`}</p>
      <Choice
        label={t`pairs of stands`}
        value={stands}
        choices={STANDS}
        choose={(value) => {
          forget();
          setStands(value);
        }}
      />
      <fieldset>
        <legend>{t`Boards`}</legend>
        {able.map(({ id }) => (
          <label key={id} className="stand-board">
            <input type="checkbox" checked={!left.has(id)} onChange={() => toggle(id)} /> {id}
          </label>
        ))}
      </fieldset>
      <p>
        <button
          type="button"
          disabled={chosen.length < 2 || state.kind === "running"}
          onClick={() => start({ boards: chosen, stands: Number(stands) })}
        >{t`Lay out their days`}</button>{" "}
        {chosen.length < 2 && <span className="quiet">{t`Choose two boards at least.`}</span>}
      </p>
      <div role="status">
        {state.kind === "running" && <p className="quiet">{t`Laying out the days.`}</p>}
        {state.kind === "failed" && <p>{t`The days could not be laid out. Those above hold.`}</p>}
        {state.kind === "done" &&
          state.answer.findings
            .filter(({ severity }) => severity !== "note")
            .map(({ code, path, severity, says }) => (
              <p key={`${code} ${path}`} className={`tape tape-${severity}`}>
                {asSentence(tellPhrase(says, reader))}
              </p>
            ))}
      </div>
      {shop !== null && <SharedDays boards={chosen} shop={shop} />}
    </section>
  );
}

function SharedDays({
  boards,
  shop,
}: {
  readonly boards: readonly ShopBoardOnPage[];
  readonly shop: ShopCalendar;
}) {
  const t = useTell();
  const { reader } = useSettings();
  const plans = useMemo(
    () => plansInShop(new Map(boards.map(({ id, plan }) => [id, plan])), shop),
    [boards, shop],
  );
  const draw = useCallback(
    (widthMm: number) => shopDaysDrawing(plans, { reader, widthMm, stands: shop.stands }),
    [plans, shop, reader],
  );
  return (
    <>
      <SheetDrawing
        title={t`The days of the boards on shared stands`}
        desc={t`A row for each board and for each pair of stands; the times stand below in words.`}
        draw={draw}
      />
      <ul>
        {shop.boards.map(({ id, calendar }) => {
          const [here, alone] = [
            surfIn(calendar),
            boards.find((board) => board.id === id)?.plan.water.firstSurfAt,
          ];
          return (
            <li key={id}>
              {here === null
                ? t`${id}: no first surf by these days`
                : alone == null || alone === here
                  ? t`${id}: first surf ${wallTimeText(here, reader)}`
                  : t`${id}: first surf ${wallTimeText(here, reader)}, alone ${wallTimeText(alone, reader)}`}
            </li>
          );
        })}
      </ul>
      <details>
        <summary>{t`Who stands where`}</summary>
        <ol className="stand-list">
          {shop.stands.map(({ board, stand, fromAt, toAt }) => (
            <li key={`${stand} ${fromAt}`}>
              {t`Stands ${stand}: ${board}, ${wallTimeText(fromAt, reader)} to ${wallTimeText(toAt, reader)}`}
            </li>
          ))}
        </ol>
      </details>
      <p>
        <button
          type="button"
          onClick={() => void saveShopIcs({ boards, shop, reader, stamp: new Date() })}
        >{t`Calendar (.ics)`}</button>
      </p>
    </>
  );
}
