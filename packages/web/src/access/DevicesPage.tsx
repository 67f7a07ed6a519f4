import { useCallback, useEffect, useState } from "react";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { isKeeper, useAccess } from "./Access";
import { type ListedDevice, listDevices, type Pairing, readPairing } from "./accessClient";
import { DeviceRow } from "./DeviceRow";
import { PairingPart } from "./PairingPart";
import "./access.css";

const LOOK_AGAIN_MS = 3000;

/** For a keeper: the devices that are let in, and at the shop's computer the code for the next. */
export default function DevicesPage() {
  const t = useTell();
  const title = t`Devices`;
  const { access } = useAccess();
  usePageTitle(title);
  return (
    <>
      <PageTop
        home={
          <PageLink to="/" className="home">
            Lapline
          </PageLink>
        }
      />
      <main className="page devices">
        <h1>{title}</h1>
        {access !== null && !isKeeper(access) && <p>{t`Only a keeper sees the devices.`}</p>}
        {access !== null && isKeeper(access) && <Devices isHere={access.here} />}
      </main>
    </>
  );
}

function Devices({ isHere }: { isHere: boolean }) {
  const t = useTell();
  const [devices, setDevices] = useState<readonly ListedDevice[] | null>(null);
  const [pairing, setPairing] = useState<Pairing | null>(null);
  const look = useCallback(async () => {
    const [listed, offered] = await Promise.all([listDevices(), isHere ? readPairing() : null]);
    if (listed !== null) setDevices(listed);
    if (offered !== null) setPairing(offered);
  }, [isHere]);
  useEffect(() => {
    void look();
    const timer = window.setInterval(
      () => document.visibilityState === "visible" && void look(),
      LOOK_AGAIN_MS,
    );
    return () => window.clearInterval(timer);
  }, [look]);
  return (
    <>
      {isHere ? (
        pairing !== null && <PairingPart pairing={pairing} made={look} />
      ) : (
        <p>{t`The code for another device is made at the shop's computer itself.`}</p>
      )}
      <h2>{t`Let in`}</h2>
      {devices?.length === 0 && <p>{t`No device yet: only the shop's computer itself.`}</p>}
      {devices !== null && devices.length > 0 && (
        <ul className="device-list">
          {devices.map((device) => (
            <DeviceRow key={device.id} device={device} changed={look} />
          ))}
        </ul>
      )}
    </>
  );
}
