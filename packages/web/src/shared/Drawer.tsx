import { type ReactNode, useEffect, useId, useRef } from "react";
import { useTell } from "../settings/useTell";
import "./drawer.css";

interface DrawerProps {
  readonly title: ReactNode;
  readonly children: ReactNode;
  /** Over the whole page; its style comes with what asks for it. */
  readonly isWide?: boolean;
  close(): void;
}

/** A sheet over the page until it is closed, from below on a phone and from the right on a desk; the focus goes back to where it was. */
export function Drawer({ title, children, isWide = false, close }: DrawerProps) {
  const t = useTell();
  const titleId = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const opener = document.activeElement;
    if (dialog.current?.open === false) dialog.current.showModal();
    return () => {
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: a touch beside the sheet closes it; by keyboard Escape does
    <dialog
      ref={dialog}
      className={isWide ? "drawer drawer-wide" : "drawer"}
      aria-labelledby={titleId}
      onClose={close}
      onClick={(event) => {
        if (event.target === event.currentTarget) event.currentTarget.close();
      }}
    >
      <div className="drawer-head">
        <h2 id={titleId}>{title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t`Close`}
        </button>
      </div>
      <div className="drawer-sheet">{children}</div>
    </dialog>
  );
}
