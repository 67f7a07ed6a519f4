import { createPortal } from "react-dom";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { AmountText } from "../shared/AmountText";
import { Said } from "../shared/Said";
import { Keypad } from "./Keypad";
import { leavesPad } from "./leavesPad";
import { goToField, nextField } from "./nextField";
import { usePad } from "./PadContext";
import type { PadTarget } from "./PadTarget";
import { padUnits } from "./PadValue";
import { usePadText } from "./usePadText";

/** The reading pad: what is read and its number large, the keys, and the way on to the next, all under one thumb. */
export function ReadingPad({ target }: { target: PadTarget }) {
  const t = useTell();
  const { units } = useSettings();
  const pad = usePad();
  const { id, label, value, dimension, problem, beside } = target;
  const [unit = ""] = padUnits(dimension, units);
  const keys = usePadText(value, unit, target.onType);
  if (pad?.place == null) return null;
  const next = nextField(id);
  const leave = () => {
    pad.close();
    if (pad.hasTable) pad.turn(false);
  };
  return createPortal(
    // A key leaves the cursor in its field, so that what is read aloud and where typing goes stays the same.
    <section
      className="pad"
      aria-label={t`Reading pad, ${label}`}
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
      onBlur={(event) => leavesPad(event) && pad.close()}
    >
      <p className="pad-shown">
        <span className="pad-label">{label}</span>
        <output>{value === "" ? "–" : <AmountText text={value} />}</output>
      </p>
      {problem !== undefined && value !== "" && (
        <p className="field-problem">
          <Said says={problem} />
        </p>
      )}
      <Keypad dimension={dimension} units={units} unit={keys.unit} press={keys.press} />
      <div className="pad-ways">
        <Same beside={beside} take={target.onType} />
        {beside?.nextStation !== undefined && <Way name={t`next station`} to={fieldAt(beside.nextStation)} />}
        {next !== null && <Way name={t`next`} to={next} />}
        <button type="button" onClick={leave}>
          {pad.hasTable ? t`table` : t`close`}
        </button>
      </div>
    </section>,
    pad.place,
  );
}

function Same({ beside, take }: { beside: PadTarget["beside"]; take(text: string): void }) {
  const t = useTell();
  const other = beside?.other;
  if (other?.value === undefined || other.value === "") return null;
  const { name, value } = other;
  return (
    <button type="button" onClick={() => take(value)}>
      {t`same as ${name}`}
    </button>
  );
}

function Way({ name, to }: { name: string; to: HTMLElement | null }) {
  if (to === null) return null;
  return (
    <button type="button" onClick={() => goToField(to)}>
      {name}
    </button>
  );
}

const fieldAt = (at: string): HTMLElement | null =>
  document.querySelector<HTMLElement>(`[data-at="${CSS.escape(at)}"]`);
