import type { AddressInfo, Server } from "node:net";

/** Listens on the first of the ports that can be had; 0 is any free one. Throws where none can. */
export async function listenOnFirstFree(
  server: Server,
  host: string,
  ports: readonly number[],
): Promise<number> {
  for (const port of ports) {
    const taken = await listen(server, host, port);
    if (taken === null) return (server.address() as AddressInfo).port;
    if (taken.code !== "EADDRINUSE" && taken.code !== "EACCES") throw taken;
  }
  throw new PortsTakenError(ports);
}

function listen(server: Server, host: string, port: number): Promise<NodeJS.ErrnoException | null> {
  return new Promise((resolve) => {
    server.once("error", resolve);
    server.listen(port, host, () => {
      server.off("error", resolve);
      resolve(null);
    });
  });
}

/** None of the ports that were to be tried could be had. */
export class PortsTakenError extends Error {
  override readonly name = "PortsTakenError";

  constructor(ports: readonly number[]) {
    super(
      ports.length === 1 ? `port ${ports[0]} is taken` : `ports ${ports[0]} to ${ports.at(-1)} are taken`,
    );
  }
}
