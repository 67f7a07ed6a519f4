import { formatTapeLength } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { AmountText } from "./AmountText";

/** A length to be marked off, to the finest step of the reader's tape. */
export function TapeAmount({ ofM }: { ofM: number | null }) {
  const { reader } = useSettings();
  if (ofM === null) return <span className="amount">–</span>;
  return <AmountText text={formatTapeLength(ofM, reader)} />;
}
