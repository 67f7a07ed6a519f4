import { type FormEvent, useEffect, useRef, useState } from "react";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { moveTo } from "../shared/usePath";
import { useAccess } from "./Access";
import { handInCode, LONGEST_NAME, type Refusal } from "./accessClient";
import { CodeKeys } from "./CodeKeys";
import { takeCodeFromAddress } from "./codeInAddress";
import { RefusalTape } from "./RefusalTape";
import "./access.css";

const DIGITS = 8;

/** Where a device is let in: the code, by big keys or scanned, and what the device is to be called. */
export default function PairPage() {
  const t = useTell();
  const title = t`Let this device in`;
  const { access } = useAccess();
  usePageTitle(title);
  return (
    <>
      <PageTop home={<span className="home">Lapline</span>} />
      <main className="page pair">
        <h1>{title}</h1>
        {access?.here === true && (
          <p>
            {t`This is the shop's computer: it needs no code.`}{" "}
            <PageLink to="/devices">{t`Devices`}</PageLink>
          </p>
        )}
        {access?.device != null && (
          <p>
            {t`This device is let in; the others know it as ${access.device.name}.`}{" "}
            <PageLink to="/">{t`All boards`}</PageLink>
          </p>
        )}
        {access !== null && !access.here && access.device === null && <PairForm isSecure={access.secure} />}
      </main>
    </>
  );
}

function PairForm({ isSecure }: { isSecure: boolean }) {
  const t = useTell();
  const { ask } = useAccess();
  const [code, setCode] = useState("");
  const [name, setName] = useState("");
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const [isSending, setSending] = useState(false);
  const nameField = useRef<HTMLInputElement>(null);
  useScannedCode((scanned) => {
    setCode(scanned);
    nameField.current?.focus();
  });
  const isWhole = code.length === DIGITS && name.trim() !== "";

  const handIn = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    if (!isWhole || isSending) return;
    setSending(true);
    const refused = await handInCode(code, name);
    setSending(false);
    setRefusal(refused);
    if (refused === null) {
      ask();
      if (window.location.pathname === "/pair") moveTo("/");
    } else if (refused.reason !== "name" && refused.reason !== "away") setCode("");
  };

  return (
    <form onSubmit={handIn}>
      <p>{t`The code stands at the shop's computer: in its terminal, and on its page Devices.`}</p>
      <label className="pair-field">
        {t`Code, eight digits`}
        <input
          className="code-digits"
          value={code}
          inputMode="none"
          autoComplete="off"
          onChange={({ target }) => {
            target.value = target.value.replace(/\D/g, "").slice(0, DIGITS);
            setCode(target.value);
          }}
        />
      </label>
      <CodeKeys
        press={(digit) => setCode((typed) => (typed + digit).slice(0, DIGITS))}
        back={() => setCode((typed) => typed.slice(0, -1))}
      />
      <label className="pair-field">
        {t`What the others know it by, such as “phone, glassing bay”`}
        <input
          ref={nameField}
          value={name}
          maxLength={LONGEST_NAME}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <button type="submit" className="pair-go" aria-disabled={!isWhole || isSending}>
        {t`Let it in`}
      </button>
      <div role="alert">{refusal !== null && <RefusalTape refusal={refusal} />}</div>
      {!isSecure && (
        <p className="tape">
          {t`This is plain HTTP: whoever is on the same network can listen to it, and take a device's place with what was heard. Use it in the shop's own network only.`}
        </p>
      )}
    </form>
  );
}

/** The code of the address, now and when another one is scanned into the open page. */
function useScannedCode(take: (code: string) => void): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const look = () => {
      const code = takeCodeFromAddress();
      if (code !== null) latest.current(code);
    };
    look();
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, []);
}
