import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** The letters in a folder, oldest first, as text without the line folding of mail. */
export const lettersIn = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith(".eml"))
        .sort()
        .map((name) => unfolded(readFileSync(path.join(folder, name), "utf8")))
    : [];

/** The link in a letter: page and secret. */
export function linkIn(letter: string | undefined): string {
  const found = /https?:\/\/[^/\s]+(\/[\w-]+#[\w-]{43})/.exec(letter ?? "")?.[1];
  if (found === undefined) throw new Error(`there is no link in this letter:\n${letter}`);
  return found;
}

/** Quoted-printable, RFC 2045 section 6.7. */
const unfolded = (text: string): string =>
  /^content-transfer-encoding: quoted-printable/im.test(text)
    ? text
        .replaceAll(/=\r?\n/g, "")
        .replaceAll(/(=[0-9A-F]{2})+/g, (bytes) => Buffer.from(bytes.replaceAll("=", ""), "hex").toString("utf8"))
    : text;
