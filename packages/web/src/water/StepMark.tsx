import type { BoardFile } from "@lapline/contract";
import { type Plan, parseQuantity } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useLayoutEffect, useRef, useState } from "react";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { useSettings } from "../settings/Settings";
import { WhenField } from "../shared/WhenField";
import { wallTime } from "../shared/wallTime";
import { markDone } from "./markDone";

interface StepMarkProps {
  readonly step: NonNullable<Plan["steps"]>[number];
  readonly file: BoardFile;
  edit(path: FieldPath, value: unknown): void;
}

/** Marks a step done, with its time and, after a coat, what the board weighs; marked again, the later mark corrects the earlier. */
export function StepMark({ step, file, edit }: StepMarkProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [isOpen, setOpen] = useState(false);
  const [at, setAt] = useState("");
  const [weighs, setWeighs] = useState("");
  const place = useFocusKept(isOpen);
  const read = weighs.trim() === "" ? null : parseQuantity(weighs, "mass");
  const open = () => {
    setAt(step.doneAt ?? wallTime(new Date()));
    setOpen(true);
  };
  const note = () => {
    if (read !== null && !read.ok) return;
    const mass = read === null ? null : weighs.trim();
    edit(["record"], markDone(file.record ?? [], { step: step.id, at, mass }));
    setWeighs("");
    setOpen(false);
  };
  if (!isOpen) {
    return (
      <button ref={place.button} type="button" className="step-mark" onClick={open}>
        {step.done ? t`Change the mark` : t`Mark done`}
      </button>
    );
  }
  return (
    <form
      ref={place.form}
      className="through-form"
      aria-label={t`Mark done`}
      onSubmit={(event) => {
        event.preventDefault();
        note();
      }}
    >
      <WhenField label={t`Hands off at`} value={at} onPick={setAt} />
      {step.coat !== null && (
        <QuantityField
          label={t`The board weighs, if it was on the scale`}
          value={weighs}
          dimension="mass"
          problem={read !== null && !read.ok ? read.says : undefined}
          onType={setWeighs}
        />
      )}
      <button type="submit">{t`Write it down`}</button>
      <button type="button" onClick={() => setOpen(false)}>{t`Leave it`}</button>
    </form>
  );
}

/** Form and button stand in each other's place: the keys go to the one that comes, and are not lost with the one that goes. */
function useFocusKept(isOpen: boolean) {
  const button = useRef<HTMLButtonElement>(null);
  const form = useRef<HTMLFormElement>(null);
  const was = useRef(isOpen);
  useLayoutEffect(() => {
    if (was.current === isOpen) return;
    was.current = isOpen;
    (isOpen ? form.current?.querySelector("input") : button.current)?.focus();
  }, [isOpen]);
  return { button, form };
}
