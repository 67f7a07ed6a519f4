/** The part of gltf-validator that the tests use; the package brings no types. */
declare module "gltf-validator" {
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly numInfos: number;
      readonly numHints: number;
      readonly messages: readonly unknown[];
    };
    readonly info: { readonly version: string; readonly generator: string };
  }
  const validator: { validateBytes(bytes: Uint8Array): Promise<Report> };
  export default validator;
}
