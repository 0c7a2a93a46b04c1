import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Metrics } from "./metrics.ts";

/** Gives the metrics at `/metrics` on an address of their own, which is none of the service's: they are not for the public. */
export async function serveMetrics(
  metrics: Metrics,
  { host, port }: { host: string; port: number },
): Promise<{ port: number; close(): Promise<void> }> {
  const server = createServer((request, response) => {
    if (request.url !== "/metrics") return void response.writeHead(404).end();
    metrics.text().then(
      (text) => response.writeHead(200, { "content-type": metrics.contentType }).end(text),
      () => response.writeHead(500).end(),
    );
  });
  await new Promise<void>((listening, failed) => server.once("error", failed).listen(port, host, () => listening()));
  return { port: portOf(server), close: () => close(server) };
}

function portOf(server: Server): number {
  const address: AddressInfo | string | null = server.address();
  return address !== null && typeof address === "object" ? address.port : 0;
}

async function close(server: Server): Promise<void> {
  const closed = new Promise<void>((done) => server.close(() => done()));
  server.closeAllConnections();
  await closed;
}
