import { type ReactNode, useState } from "react";

interface FoldProps {
  readonly title: string;
  /** Folded on every screen to begin with. */
  readonly isFolded?: boolean;
  readonly children: ReactNode;
}

/** A part that lies open where there is room for it and folded on a phone, until the reader says otherwise. */
export function Fold({ title, isFolded = false, children }: FoldProps) {
  const [isOpen, setOpen] = useState(() => !isFolded && window.matchMedia("(min-width: 48rem)").matches);
  return (
    <details className="fold" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>{title}</h3>
      </summary>
      {children}
    </details>
  );
}
