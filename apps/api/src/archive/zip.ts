import { unzip, zip, type AsyncZippable } from "fflate";

/** What an archive may be at most. */
export interface ZipLimits {
  fileBytes: number;
  unfoldedBytes: number;
  files: number;
  ratio: number;
}

export type Opened = { ok: true; files: Map<string, Uint8Array> } | { ok: false; fault: string };

/** No clock in it: the same files give the same bytes. The format knows no year before this one. */
const noTime = new Date(1980, 0, 1);

/** Folds files into one ZIP (APPNOTE 6.3, deflate), in the order given. */
export const packZip = (files: ReadonlyMap<string, Uint8Array>): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const entries: AsyncZippable = Object.fromEntries(files);
    zip(entries, { mtime: noTime, level: 6 }, (error, bytes) => (error === null ? resolve(bytes) : reject(error)));
  });

/**
 * Unfolds a ZIP into memory, never more of it than the limits allow: what its directory states is added up before
 * anything is unfolded, and no file is given more room than it states. Names are never used as paths.
 */
export function openZip(bytes: Uint8Array, limits: ZipLimits): Promise<Opened> {
  const fault = (words: string): Opened => ({ ok: false, fault: words });
  if (bytes.byteLength > limits.fileBytes) return Promise.resolve(fault(`it is larger than ${limits.fileBytes} bytes`));
  const seen = new Set<string>();
  let [stated, count, twice] = [0, 0, ""];
  return new Promise((resolve) => {
    const filter = ({ name, originalSize }: { name: string; originalSize: number }): boolean => {
      if (seen.has(name)) twice = name;
      seen.add(name);
      [stated, count] = [stated + originalSize, count + 1];
      return count <= limits.files && stated <= mostUnfolded(bytes, limits) && twice === "";
    };
    try {
      unzip(bytes, { filter }, (error, files) => {
        if (count > limits.files) resolve(fault(`it holds more than ${limits.files} files`));
        else if (stated > mostUnfolded(bytes, limits))
          resolve(fault(`it unfolds to more than is taken: ${stated} bytes`));
        else if (twice !== "") resolve(fault(`it holds ${twice} twice`));
        else if (error !== null) resolve(fault(`it is not a whole ZIP: ${error.message}`));
        else resolve({ ok: true, files: new Map(Object.entries(files)) });
      });
    } catch (error) {
      resolve(fault(`it is not a whole ZIP: ${error instanceof Error ? error.message : String(error)}`));
    }
  });
}

const mostUnfolded = (bytes: Uint8Array, { unfoldedBytes, ratio }: ZipLimits): number =>
  Math.min(unfoldedBytes, bytes.byteLength * ratio);
