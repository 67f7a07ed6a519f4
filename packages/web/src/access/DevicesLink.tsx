import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { isKeeper, useAccess } from "./Access";

/** The way from the Shed to the devices, for a keeper. */
export function DevicesLink() {
  const t = useTell();
  const { access } = useAccess();
  return isKeeper(access) ? (
    <PageLink to="/devices" className="way">
      {t`Devices`}
    </PageLink>
  ) : null;
}
