import { loadWorkings } from "@lapline/present";
import { useEffect, useState } from "react";
import { useSettings } from "../settings/Settings";

/** Whether the texts that only an explanation needs are at hand in the reader's language; in English where they cannot be fetched. */
export function useWorkings(): boolean {
  const { language } = useSettings().reader;
  const [here, setHere] = useState<string | null>(language === "en" ? language : null);
  useEffect(() => {
    const done = () => setHere(language);
    loadWorkings(language).then(done, done);
  }, [language]);
  return here === language;
}
