import { type ReactNode, useRef, useState } from "react";

interface FoldProps {
  readonly title: string;
  /** Folded on every screen to begin with. */
  readonly isFolded?: boolean;
  /** What is in it is made only while it lies open, so that it costs nothing while a field is typed. */
  readonly isMadeOpen?: boolean;
  readonly children: ReactNode;
}

/** A part that lies open where there is room for it and folded on a phone, until the reader says otherwise. */
export function Fold({ title, isFolded = false, isMadeOpen = false, children }: FoldProps) {
  const [isOpen, setOpen] = useState(() => !isFolded && window.matchMedia("(min-width: 48rem)").matches);
  // What nobody sees stays as it was until it is opened, so that it holds up no key.
  const seen = useRef(children);
  if (isOpen) seen.current = children;
  return (
    <details className="fold" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>{title}</h3>
      </summary>
      {(isOpen || !isMadeOpen) && seen.current}
    </details>
  );
}
