import { createServer } from "node:http";
import { once } from "node:events";

/** A package registry on loopback with one package, whose archive it holds back until told otherwise. */
export interface SlowRegistry {
  url: string;
  /** Resolves once the archive has been asked for. */
  asked: Promise<void>;
  /** From now on the archive is sent at once. */
  hurry(): void;
  close(): Promise<void>;
}

export async function slowRegistry(archive: Buffer): Promise<SlowRegistry> {
  let slow = true;
  let noteAsked = (): void => undefined;
  const asked = new Promise<void>((resolve) => (noteAsked = resolve));
  const server = createServer((request, response) => {
    if (request.url === "/one-pad")
      return void response.end(JSON.stringify(listing(`http://${request.headers.host}/one-pad.tgz`)));
    noteAsked();
    if (!slow) response.end(archive);
  }).listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  const port = address !== null && typeof address === "object" ? address.port : 0;
  const close = async (): Promise<void> => {
    server.closeAllConnections();
    server.close();
    await once(server, "close");
  };
  return { url: `http://127.0.0.1:${port}/`, asked, hurry: () => (slow = false), close };
}

function listing(tarball: string): unknown {
  return {
    name: "one-pad",
    "dist-tags": { latest: "1.0.0" },
    versions: { "1.0.0": { name: "one-pad", version: "1.0.0", dist: { tarball } } },
  };
}
