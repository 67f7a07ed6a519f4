import { useState } from "react";
import type { SavedVersion } from "../api/boardClient";
import { useTell } from "../settings/useTell";
import { wallTime } from "../shared/wallTime";
import { deviceName } from "./deviceName";

interface VersionTableProps {
  /** Newest first. */
  readonly versions: readonly SavedVersion[];
  compare(version: number): void;
  take(version: number): void;
}

/** A screenful; a board that was long at the bench has hundreds. */
const FIRST = 10;

/** The saved versions, newest first. */
export function VersionTable({ versions, compare, take }: VersionTableProps) {
  const t = useTell();
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? versions : versions.slice(0, FIRST);
  return (
    <>
      <table>
        <caption className="unseen">{t`Saved versions, the newest first`}</caption>
        <thead>
          <tr>
            <th scope="col">{t`version`}</th>
            <th scope="col">{t`saved`}</th>
            <th scope="col">{t`device`}</th>
            <th scope="col">{t`engine`}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {shown.map(({ version, savedAt, device, engine }, i) => (
            <tr key={version}>
              <th scope="row">{version}</th>
              <td>{t`${wallTime(new Date(savedAt))}`}</td>
              <td>{deviceName(device, t)}</td>
              <td>{engine}</td>
              <td className="version-act">
                <button type="button" className="plain" onClick={() => compare(version)}>
                  {t`compare`}
                  <span className="unseen"> {t`version ${version}`}</span>
                </button>
                {i > 0 && (
                  <button type="button" className="plain" onClick={() => take(version)}>
                    {t`bring back`}
                    <span className="unseen"> {t`version ${version}`}</span>
                  </button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {shown.length < versions.length && (
        <p>
          <button type="button" onClick={() => setWhole(true)}>{t`All ${versions.length} versions`}</button>
        </p>
      )}
    </>
  );
}
