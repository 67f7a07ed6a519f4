export type { BoardStore } from "./BoardStore";
export { keepDemoBoards } from "./keepDemoBoards";
export { makeFolder } from "./makeFolder";
export { openFolderStore } from "./openFolderStore";
export { PortsTakenError, type RunningServer, startServer } from "./startServer";
