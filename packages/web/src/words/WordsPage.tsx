import { tellText } from "@lapline/present";
import { useEffect } from "react";
import { useSettings } from "../settings/Settings";
import { SettingsBar } from "../settings/SettingsBar";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { GLOSSARY } from "./glossary";
import { useWorkings } from "./useWorkings";
import { WordList } from "./WordList";
import "./words.css";

/** Every word of the trade and of the program in a line, on one page. */
export default function WordsPage() {
  const { reader } = useSettings();
  const t = useTell();
  const isHere = useWorkings();
  useEffect(() => {
    document.title = `${t`Words`} · Lapline`;
  }, [t]);
  return (
    <>
      <header className="top">
        <PageLink to="/" className="home">
          <span aria-hidden="true">‹&nbsp;</span>
          {t`The Shed`}
        </PageLink>
        <SettingsBar />
      </header>
      <main className="page words-page" aria-busy={!isHere}>
        <h1>{t`Words`}</h1>
        <p>{t`Left and right are always the surfer's: standing at the tail, facing the nose, deck up.`}</p>
        {isHere &&
          GLOSSARY.map((part) => (
            <section key={part.title}>
              <h2>{tellText(part.title, reader)}</h2>
              <WordList part={part} />
            </section>
          ))}
      </main>
    </>
  );
}
