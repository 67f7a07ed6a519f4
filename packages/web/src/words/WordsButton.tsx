import { lazy, Suspense, useState } from "react";
import { useTell } from "../settings/useTell";
import "./words-button.css";

const WordsDrawer = lazy(() => import("./WordsDrawer"));

interface WordsButtonProps {
  /** A part of the glossary, as it is called there. */
  readonly title: string;
  /** What the words are used in, for who hears the page. */
  readonly of: string;
}

/** A small way to what the words of a part mean. */
export function WordsButton({ title, of }: WordsButtonProps) {
  const t = useTell();
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="plain" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {t`words`}
        <span className="unseen"> {t`of ${of}, and what they mean`}</span>
      </button>
      {isOpen && (
        <Suspense>
          <WordsDrawer title={title} close={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
