import { type FormEvent, useState } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { useAccess } from "./Access";
import { type ListedDevice, LONGEST_NAME, renameDevice, revokeDevice } from "./accessClient";

/** Where the keys go on from once it is there. */
const focusOn = (element: HTMLElement | null): void => element?.focus();

interface DeviceRowProps {
  readonly device: ListedDevice;
  changed(): void;
}

/** One device: what it is called, what it may do, when it was last here, and the way to put it out. */
export function DeviceRow({ device, changed }: DeviceRowProps) {
  const t = useTell();
  const { ask } = useAccess();
  const { reader } = useSettings();
  const [doing, setDoing] = useState<"nothing" | "renaming" | "revoking">("nothing");
  const seen = new Intl.DateTimeFormat(reader.language === "de" ? "de-DE" : "en-GB", {
    dateStyle: "medium",
    timeStyle: "short",
  }).format(new Date(device.seenAt));
  const done = (): void => {
    setDoing("nothing");
    changed();
    if (device.own) ask();
  };
  return (
    <li>
      {doing === "renaming" ? (
        <RenameForm device={device} done={done} leave={() => setDoing("nothing")} />
      ) : (
        <p className="device-name">{device.name}</p>
      )}
      <p className="quiet">
        {device.role === "keeper" ? t`keeper` : t`at the bench`}
        {device.own && <>, {t`this device`}</>}; {t`last here ${seen}`}
      </p>
      {doing === "nothing" && (
        <p className="device-acts">
          <button type="button" aria-label={t`Rename ${device.name}`} onClick={() => setDoing("renaming")}>
            {t`Rename`}
          </button>
          <button type="button" aria-label={t`Put out ${device.name}`} onClick={() => setDoing("revoking")}>
            {t`Put out`}
          </button>
        </p>
      )}
      {doing === "revoking" && (
        <fieldset className="device-sure">
          <legend className="unseen">{t`Put out ${device.name}`}</legend>
          <p>{t`It is out at once, and needs a new code to come back. What it wrote stays.`}</p>
          <p className="device-acts">
            <button type="button" ref={focusOn} onClick={() => revokeDevice(device.id).then(done)}>
              {t`Put it out`}
            </button>
            <button type="button" onClick={() => setDoing("nothing")}>
              {t`Leave it in`}
            </button>
          </p>
        </fieldset>
      )}
    </li>
  );
}

interface RenameFormProps {
  readonly device: ListedDevice;
  done(): void;
  leave(): void;
}

function RenameForm({ device, done, leave }: RenameFormProps) {
  const t = useTell();
  const [name, setName] = useState(device.name);
  const [refused, setRefused] = useState<"taken" | "name" | "away" | null>(null);
  const rename = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const result = await renameDevice(device.id, name);
    if (result === "renamed") done();
    else setRefused(result);
  };
  return (
    <form className="device-rename" onSubmit={rename}>
      <label>
        <span className="unseen">{t`New name of ${device.name}`}</span>
        <input
          value={name}
          maxLength={LONGEST_NAME}
          ref={focusOn}
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <button type="submit">{t`Keep the name`}</button>
      <button type="button" onClick={leave}>
        {t`Leave the name`}
      </button>
      <div role="alert">
        {refused === "taken" && t`Another device has this name, or had it.`}
        {refused === "name" && t`A name is one line of 1 to 40 characters.`}
        {refused === "away" && t`The shop's computer cannot be reached.`}
      </div>
    </form>
  );
}
