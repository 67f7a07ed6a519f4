import { useTell } from "../settings/useTell";
import { usePad } from "./PadContext";

/** Big keys instead of the device's own, for the fields of a table. */
export function PadSwitch() {
  const t = useTell();
  const pad = usePad();
  if (pad === null) return null;
  return (
    <label className="pad-switch">
      <input type="checkbox" checked={pad.isOn} onChange={(event) => pad.turn(event.target.checked)} />
      {t`big keys`}
    </label>
  );
}
