import { type ReactNode, useState } from "react";

/** A part that lies open where there is room for it and folded on a phone, until the reader says otherwise. */
export function Fold({ title, children }: { title: string; children: ReactNode }) {
  const [isOpen, setOpen] = useState(() => window.matchMedia("(min-width: 48rem)").matches);
  return (
    <details className="fold" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>{title}</h3>
      </summary>
      {children}
    </details>
  );
}
