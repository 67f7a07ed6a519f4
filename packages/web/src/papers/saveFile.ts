/** Hands a file that was made in the page to the browser, to be kept where downloads go. */
export function saveFile(name: string, type: string, content: string | Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken it up by the next turn.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
