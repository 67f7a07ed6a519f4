import { useEffect } from "react";
import { failureWords } from "../api/failureWords";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";

interface NotOpenedProps {
  readonly why: unknown;
  /** The shop's computer does not know this device: the reader is led to where it is paired. */
  readonly isUnpaired: boolean;
}

/** Why a board's page is not there, and the way back. */
export function NotOpened({ why, isUnpaired }: NotOpenedProps) {
  const t = useTell();
  useEffect(() => {
    if (isUnpaired) window.location.assign("/pair");
  }, [isUnpaired]);
  return (
    <main className="page">
      <h1>{t`This board cannot be opened`}</h1>
      <p className="tape tape-blocker">{failureWords(why, t)}</p>
      <p>
        <PageLink to="/" className="way">{t`All boards`}</PageLink>
      </p>
    </main>
  );
}
