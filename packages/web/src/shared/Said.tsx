import type { Phrase } from "@lapline/engine";
import { tellPhrase } from "@lapline/present";
import { useSettings } from "../settings/Settings";

/** A sentence of the contract or the engine, in the reader's language. */
export function Said({ says }: { readonly says: Phrase }) {
  const { reader } = useSettings();
  return <>{tellPhrase(says, reader)}</>;
}
