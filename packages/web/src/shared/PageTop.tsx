import type { ReactNode } from "react";
import { SettingsBar } from "../settings/SettingsBar";
import { useTell } from "../settings/useTell";
import { PageLink } from "./PageLink";

interface PageTopProps {
  /** What stands at the left; the way back to the Shed if left out. */
  readonly home?: ReactNode;
  /** What the page offers besides. */
  readonly children?: ReactNode;
}

/** The head of a page: the way back, what the page offers, and how it is read. */
export function PageTop({ home = <BackToShed />, children }: PageTopProps) {
  return (
    <header className="top">
      {home}
      {children}
      <SettingsBar />
    </header>
  );
}

function BackToShed() {
  const t = useTell();
  return (
    <PageLink to="/" className="home">
      <span aria-hidden="true">‹&nbsp;</span>
      {t`The Shed`}
    </PageLink>
  );
}
