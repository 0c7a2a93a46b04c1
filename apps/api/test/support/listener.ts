import http from "node:http";

export interface Heard {
  method: string | undefined;
  url: string | undefined;
  headers: http.IncomingHttpHeaders;
  body: string;
}

/** Someone else's service on this machine, and everything it was sent. */
export interface Listener {
  url: string;
  heard: Heard[];
  close(): Promise<void>;
}

export async function startListener(answer: http.RequestListener): Promise<Listener> {
  const heard: Heard[] = [];
  const server = http.createServer((request, response) => {
    let body = "";
    request.on("data", (part) => (body += String(part)));
    request.on("end", () => {
      heard.push({ method: request.method, url: request.url, headers: request.headers, body });
      answer(request, response);
    });
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the listener has no port");
  const close = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      server.closeAllConnections();
    });
  return { url: `http://127.0.0.1:${address.port}`, heard, close };
}
