import { finName } from "@lapline/present";
import { useState } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import type { FinsForm } from "./FinsForm";

/** Any fin by any name: what is missing of it is then asked for. */
export function AddFin({ form: { fins, edit } }: { form: FinsForm }) {
  const { reader } = useSettings();
  const t = useTell();
  const [name, setName] = useState("");
  const fin = name.trim();
  const isThere = fins.set.some((each) => each.fin === fin);
  return (
    <form
      className="add-fin"
      onSubmit={(event) => {
        event.preventDefault();
        if (fin === "" || isThere) return;
        const offLine = fin === "centre" ? {} : { fromRail: "" };
        edit(["fins", "set", fins.set.length], { fin, fromTail: "", ...offLine, base: "" });
        setName("");
      }}
    >
      <div className="field">
        <label htmlFor="add-fin-name">{t`Another fin: front, rear, centre, or a name of its own`}</label>
        <input
          id="add-fin-name"
          type="text"
          autoComplete="off"
          value={name}
          aria-invalid={isThere}
          aria-describedby={isThere ? "add-fin-note" : undefined}
          onChange={(event) => setName(event.target.value)}
        />
        {isThere && (
          <p id="add-fin-note" className="field-problem" role="status">
            {t`This set has its ${finName(fin, reader)} fin: one line stands for both sides. Give this one another name.`}
          </p>
        )}
      </div>
      <button type="submit">{t`Add`}</button>
    </form>
  );
}
