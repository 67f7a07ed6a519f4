/** The engine's version, as it stands in every plan; a test holds it equal to the package's. */
export const ENGINE_VERSION = "0.1.0";
