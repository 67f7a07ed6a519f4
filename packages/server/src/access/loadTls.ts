import { createPrivateKey, type KeyObject, X509Certificate } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createSecureContext } from "node:tls";

/** A certificate with its key, as the server takes them. */
export interface Tls {
  readonly cert: Buffer;
  readonly key: Buffer;
  readonly certificate: X509Certificate;
}

/** The files for HTTPS cannot be used; the message says which and why. */
export class TlsRefusedError extends Error {
  override readonly name = "TlsRefusedError";
}

/**
 * Reads a certificate (PEM, with those that vouch for it behind it) and its private key (PEM, without a passphrase).
 * @throws TlsRefusedError where one cannot be read, is of another form, or they do not belong together
 */
export async function loadTls(certPath: string, keyPath: string): Promise<Tls> {
  const [cert, key] = [await read(certPath), await read(keyPath)];
  const certificate = parseCertificate(cert, certPath);
  const privateKey = parseKey(key, keyPath);
  if (!certificate.checkPrivateKey(privateKey))
    throw new TlsRefusedError(`${certPath} and ${keyPath} do not belong together: the key is another one's`);
  try {
    createSecureContext({ cert, key });
  } catch (error) {
    throw new TlsRefusedError(
      `${certPath} cannot be used: ${error instanceof Error ? error.message : "it is refused"}`,
    );
  }
  return { cert, key, certificate };
}

async function read(path: string): Promise<Buffer> {
  try {
    return await readFile(path);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : "";
    const why =
      code === "ENOENT"
        ? "it is not there"
        : code === "EACCES"
          ? "you may not read it"
          : code === "EISDIR"
            ? "it is a folder"
            : String(code);
    throw new TlsRefusedError(`${path} cannot be read: ${why}`);
  }
}

function parseCertificate(cert: Buffer, path: string): X509Certificate {
  try {
    if (!cert.includes("-----BEGIN CERTIFICATE-----")) throw new Error("not PEM");
    return new X509Certificate(cert);
  } catch {
    throw new TlsRefusedError(`${path} is no certificate in PEM form (it begins with BEGIN CERTIFICATE)`);
  }
}

function parseKey(key: Buffer, path: string): KeyObject {
  try {
    return createPrivateKey(key);
  } catch (error) {
    const isLocked =
      key.includes("ENCRYPTED") || (error instanceof Error && /passphrase/i.test(error.message));
    throw new TlsRefusedError(
      isLocked
        ? `${path} is locked with a passphrase: give a key without one, readable by you alone`
        : `${path} is no private key in PEM form (it begins with BEGIN PRIVATE KEY)`,
    );
  }
}
