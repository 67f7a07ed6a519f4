/** `bench` may add; `keeper` may do everything. */
export type DeviceRole = "bench" | "keeper";

/** One device that was let in. Its token is not here: only a hash of it is kept. */
export interface Device {
  readonly id: string;
  /** As versions and entries name it. */
  readonly name: string;
  readonly role: DeviceRole;
  readonly pairedAt: string;
  readonly seenAt: string;
  /** It is let in until then, and longer each time it is seen. */
  readonly expiresAt: string;
}

export interface NewDevice {
  readonly name: string;
  readonly role: DeviceRole;
  readonly tokenHash: string;
  readonly expiresAt: string;
}

/**
 * The devices of the shop. One that is revoked or has run out is as good as not there; its row stays, so that its name, which versions
 * and entries bear, goes to no other.
 */
export interface DeviceStore {
  /** Those that are let in, by name. */
  list(): Promise<readonly Device[]>;
  /** Under the name asked for, or with a number behind it where another device has that name, let in or not. */
  add(device: NewDevice): Promise<Device>;
  /** The device with this token's hash, if it is let in. */
  find(tokenHash: string): Promise<Device | null>;
  /** It was here just now, and is let in until `expiresAt`. */
  see(id: string, expiresAt: string): Promise<void>;
  /** `taken` where another device has the name, let in or not. */
  rename(id: string, name: string, by: string): Promise<"renamed" | "taken" | "gone">;
  /** False where it is not let in anyway. */
  revoke(id: string, by: string): Promise<boolean>;
}
