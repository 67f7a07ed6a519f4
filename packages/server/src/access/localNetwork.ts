import { BlockList } from "node:net";
import { networkInterfaces } from "node:os";

/** Addresses of private networks: RFC 1918, and RFC 3927 for those without anybody who hands addresses out. */
const PRIVATE: ReadonlyArray<readonly [string, number]> = [
  ["192.168.0.0", 16],
  ["10.0.0.0", 8],
  ["172.16.0.0", 12],
  ["169.254.0.0", 16],
];

/** This machine's IPv4 addresses on its networks as they are now, those that shops' networks mostly have first. */
export function listLocalAddresses(): readonly string[] {
  const rankOf = (address: string) => {
    const rank = PRIVATE.findIndex((range) => blockOf([range]).check(address));
    return rank === -1 ? 0.5 : rank;
  };
  return ownSubnets()
    .map(({ address }) => address)
    .sort((a, b) => rankOf(a) - rankOf(b));
}

/** Whether an address is in a network that this machine is in, or in a private one: not somewhere on the internet. */
export function isNear(address: string): boolean {
  const own = ownSubnets().map(({ address, bits }) => [address, bits] as const);
  return blockOf([...PRIVATE, ...own, ["127.0.0.0", 8]]).check(address);
}

function ownSubnets() {
  return Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address, cidr }) => ({ address, bits: Number(cidr?.split("/")[1] ?? 32) }));
}

function blockOf(ranges: ReadonlyArray<readonly [string, number]>): BlockList {
  const block = new BlockList();
  for (const [address, bits] of ranges) block.addSubnet(address, bits);
  return block;
}
