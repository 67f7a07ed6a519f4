export type { PairingOffer } from "./access/Access";
export { loadTls, TlsRefusedError } from "./access/loadTls";
export { keepDemoBoards } from "./keepDemoBoards";
export { PortsTakenError } from "./listenOnFirstFree";
export { type RunningServer, type ServerOptions, type SharedDoor, startServer } from "./startServer";
