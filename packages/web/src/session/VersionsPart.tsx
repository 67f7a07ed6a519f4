import type { BoardFile } from "@lapline/contract";
import { useState } from "react";
import { useTell } from "../settings/useTell";
import { ComparedVersions } from "./ComparedVersions";
import type { BoardSession, OpenBoard } from "./SessionView";
import { useVersions } from "./useVersions";
import { VersionTable } from "./VersionTable";

interface VersionsPartProps {
  readonly id: string;
  readonly session: BoardSession;
  readonly board: OpenBoard;
}

/** Every version that was saved, when, where and with which engine; two held against each other, and an old one taken back. */
export function VersionsPart(props: VersionsPartProps) {
  const t = useTell();
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="assumed" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t`Saved versions`}</summary>
      {isOpen && <Versions {...props} />}
    </details>
  );
}

/** Which version is held against which; null is the board as it stands on the page. */
interface Asked {
  readonly from: number;
  readonly to: number | null;
}

function Versions({ id, session, board }: VersionsPartProps) {
  const t = useTell();
  const { versions, why, read } = useVersions(id, board.saving.kind);
  const [asked, setAsked] = useState<Asked | null>(null);
  const [taken, setTaken] = useState<number | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const take = async (version: number) => {
    const file = await read(version);
    if (typeof file === "string") setRefused(file);
    else {
      session.takeBack(file);
      setRefused(null);
      setTaken(version);
    }
  };
  if (versions.length === 0) return <p className="says">{why ?? ""}</p>;
  const now: BoardFile = board.draft.file;
  return (
    <div className="versions">
      <p className="says">
        {t`Nothing that was saved is lost. An old version that is brought back becomes the newest; the record keeps what was added since.`}
      </p>
      <div role="status">
        {why !== null && <p className="tape">{why}</p>}
        {refused !== null && <p className="tape tape-blocker">{refused}</p>}
        {taken !== null && (
          <p className="tape">{t`Version ${taken} is brought back; undo brings the other one again.`}</p>
        )}
      </div>
      <VersionTable
        versions={versions}
        compare={(from) => setAsked({ from, to: null })}
        take={(version) => void take(version)}
      />
      {asked !== null && (
        <ComparedVersions
          key={`${asked.from} ${asked.to}`}
          asked={asked}
          versions={versions}
          now={now}
          read={read}
          ask={setAsked}
        />
      )}
    </div>
  );
}
