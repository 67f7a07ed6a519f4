import packageFile from "../../package.json" with { type: "json" };

/** The program's own version. */
export const { version } = packageFile;
