/** Once the page is there: keeps the app's files for when there is no network, and sends what an earlier visit left waiting. */
export function startOffline(): void {
  if (import.meta.env.PROD && "serviceWorker" in navigator)
    // Where the browser does not allow one the page works all the same, but not without network.
    navigator.serviceWorker.register("/sw.js").catch(() => undefined);
  import("./resumeSending").then(({ resumeSending }) => resumeSending()).catch(() => undefined);
}
