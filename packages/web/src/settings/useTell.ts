import { type Tell, tell } from "@lapline/present";
import { useSettings } from "./Settings";

/** The tag that says a text in this reader's language and units. */
export function useTell(): Tell {
  return tell(useSettings().reader);
}
