import { useState } from "react";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import type { Role } from "./Access";
import { makeCode, type Offer, type Pairing } from "./accessClient";
import { QrCode } from "./QrCode";

const ROLES: readonly Role[] = ["bench", "keeper"];

/** At the shop's computer: the code for the next device, on tape to type in and as a picture to scan. */
export function PairingPart({ pairing, made }: { pairing: Pairing; made(): void }) {
  const t = useTell();
  const [role, setRole] = useState<Role>("bench");
  const names: Readonly<Record<Role, string>> = {
    bench: t`at the bench: reads and adds, takes nothing away`,
    keeper: t`keeper: does everything, puts devices out too`,
  };
  if (!pairing.shared)
    return (
      <p>
        {t`Only this machine is answered. To let the shop's devices in, stop the app and start it with`}{" "}
        <code>lapline serve --share</code>.
      </p>
    );
  return (
    <section className="pairing" aria-label={t`Let a device in`}>
      <h2>{t`Let a device in`}</h2>
      <fieldset>
        <legend className="unseen">{t`What it may do`}</legend>
        {ROLES.map((each) => (
          <label key={each} className="pairing-role">
            <input type="radio" name="role" checked={role === each} onChange={() => setRole(each)} />
            {names[each]}
          </label>
        ))}
      </fieldset>
      <button type="button" className="pair-go" onClick={() => makeCode(role).then(made)}>
        {t`Make a code`}
      </button>
      <div aria-live="polite">{pairing.offer !== null && <OfferPart offer={pairing.offer} />}</div>
      {!pairing.secure && (
        <p className="tape">
          {t`This is plain HTTP: whoever is on the same network can listen to it, and take a device's place with what was heard. Share it in a network of your own only, or start with a certificate of your own (--cert, --key).`}
        </p>
      )}
    </section>
  );
}

function OfferPart({ offer }: { offer: Offer }) {
  const t = useTell();
  const { reader } = useSettings();
  const { state, code, links } = offer;
  const [link] = links;
  if (state === "used")
    return <p>{t`The code was used. Each lets one device in: make another for the next.`}</p>;
  if (state === "expired") return <p>{t`The code has run out after five minutes.`}</p>;
  if (state === "locked" || code === null)
    return (
      <p className="tape tape-blocker">
        {t`Five wrong codes were typed in: this one is locked. If it was nobody of yours, look who is on the network.`}
      </p>
    );
  const until = new Intl.DateTimeFormat(reader.language === "de" ? "de-DE" : "en-GB", {
    timeStyle: "short",
  }).format(new Date(offer.expiresAt));
  return (
    <div className="offer">
      {link === undefined ? (
        <p className="tape tape-blocker">{t`This machine has no address on a local network just now.`}</p>
      ) : (
        <QrCode text={link} label={t`The address with the code, to scan`} />
      )}
      <div>
        <p className="tape offer-code">
          {code.slice(0, 4)} {code.slice(4)}
        </p>
        <p>
          {offer.role === "keeper"
            ? t`lets one keeper's device in, until ${until}.`
            : t`lets one device in at the bench, until ${until}.`}
        </p>
        <p>{t`Scan it, or open one of these on the device and type the code in:`}</p>
        <ul className="offer-links">
          {links.map((each) => (
            <li key={each}>{each.split("#")[0]}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
