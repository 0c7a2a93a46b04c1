import http from "node:http";
import net from "node:net";
import type { AddressInfo } from "node:net";

/** Stands for the proxy of the compose file: requests go round the ports that answer, sockets are passed on. */
export interface StandInProxy {
  origin: string;
  close(): void;
}

export async function standInProxy(ports: () => number[]): Promise<StandInProxy> {
  let turn = 0;
  const next = () => {
    const all = ports();
    return all[turn++ % all.length] ?? 0;
  };
  const server = http.createServer((request, response) => pass(request, response, next));
  server.on("upgrade", (request: http.IncomingMessage, near: net.Socket, head: Buffer) => {
    const far = net.connect(next(), "127.0.0.1", () => {
      const headers = Object.entries(request.headers).map(([name, value]) => `${name}: ${String(value)}`);
      far.write([`GET ${request.url} HTTP/1.1`, ...headers, "", ""].join("\r\n"));
      far.write(head);
      near.pipe(far).pipe(near);
    });
    for (const socket of [near, far]) socket.on("error", () => [near, far].forEach((end) => end.destroy()));
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, close: () => server.closeAllConnections() };
}

/** Passes a request on, and once more to the next one where the first does not answer: its body is kept for that. */
function pass(request: http.IncomingMessage, response: http.ServerResponse, next: () => number): void {
  const parts: Buffer[] = [];
  request.on("data", (part: Buffer) => parts.push(part));
  request.on("end", () => send(2));
  const send = (tries: number): void => {
    const forwarded = { ...request.headers, "x-forwarded-for": request.socket.remoteAddress };
    const options = { host: "127.0.0.1", port: next(), path: request.url, method: request.method, headers: forwarded };
    const on = http.request(options, (answer) => {
      response.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(response);
    });
    on.on("error", () => (tries > 1 ? send(tries - 1) : response.writeHead(502).end()));
    on.end(Buffer.concat(parts));
  };
}
