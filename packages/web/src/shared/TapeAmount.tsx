import { formatTapeLength } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { WhyNumber } from "../why/WhyNumber";
import { AmountText } from "./AmountText";

interface TapeAmountProps {
  readonly ofM: number | null;
  /** Its place in the plan, where it can be turned over. */
  readonly why?: string | undefined;
}

/** A length to be marked off, to the finest step of the reader's tape. */
export function TapeAmount({ ofM, why }: TapeAmountProps) {
  const { reader } = useSettings();
  if (ofM === null) return <span className="amount">–</span>;
  return (
    <WhyNumber path={why}>
      <AmountText text={formatTapeLength(ofM, reader)} />
    </WhyNumber>
  );
}
