import { useState } from "react";
import type { FinsForm } from "./FinsForm";

/** Any fin by any name: what is missing of it is then asked for. */
export function AddFin({ form: { fins, edit } }: { form: FinsForm }) {
  const [name, setName] = useState("");
  return (
    <form
      className="add-fin"
      onSubmit={(event) => {
        event.preventDefault();
        const fin = name.trim();
        if (fin === "") return;
        const offLine = fin === "centre" ? {} : { fromRail: "" };
        edit(["fins", "set", fins.set.length], { fin, fromTail: "", ...offLine, base: "" });
        setName("");
      }}
    >
      <div className="field">
        <label htmlFor="add-fin-name">Another fin: front, rear, centre, or a name of its own</label>
        <input
          id="add-fin-name"
          type="text"
          autoComplete="off"
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
      </div>
      <button type="submit">Add</button>
    </form>
  );
}
