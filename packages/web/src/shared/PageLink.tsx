import type { MouseEvent, ReactNode } from "react";
import { moveTo } from "./usePath";

/** A link to another page of the app; a click with a modifier opens a new tab as any link does. */
export function PageLink({
  to,
  className,
  children,
}: {
  to: string;
  className?: string;
  children: ReactNode;
}) {
  const follow = (event: MouseEvent<HTMLAnchorElement>): void => {
    const plain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
    if (!plain) return;
    event.preventDefault();
    moveTo(to);
  };
  return (
    <a href={to} className={className} onClick={follow}>
      {children}
    </a>
  );
}
