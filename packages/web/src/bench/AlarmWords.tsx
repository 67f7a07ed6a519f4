import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { atWords, momentWord } from "./clockWords";
import type { Alarms } from "./useAlarms";

/** What has come and rung, until somebody says that it was seen. */
export function AlarmWords({ alarms, nowMs }: { alarms: Alarms; nowMs: number }) {
  const t = useTell();
  const { reader } = useSettings();
  const { due, clear } = alarms;
  return (
    <div className="bench-alarm" role="alert">
      {due.length > 0 && (
        <>
          <ul>
            {due.map(({ coat, kind, atMs }) => (
              <li key={`${coat} ${kind} ${atMs}`}>
                <b>{momentWord(kind, reader)}</b>{" "}
                {t`${tellText(coat, reader)}, since ${atWords(atMs, nowMs, reader)}`}
              </li>
            ))}
          </ul>
          <button type="button" onClick={clear}>{t`Seen`}</button>
        </>
      )}
    </div>
  );
}
