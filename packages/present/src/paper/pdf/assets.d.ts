/** A file that the bundler hands over as a data URL. */
declare module "*?inline" {
  const dataUrl: string;
  export default dataUrl;
}
