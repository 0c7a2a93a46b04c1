import net from "node:net";

/** A way to a server that can be cut and mended; `url` is the given address with the way's own host and port. */
export interface CuttableProxy {
  url: string;
  cut(): Promise<void>;
  mend(): Promise<void>;
}

export async function cuttableProxy(url: string): Promise<CuttableProxy> {
  const to = new URL(url);
  const sockets = new Set<net.Socket>();
  const server = net.createServer((near) => {
    const far = net.connect(Number(to.port), to.hostname);
    for (const socket of [near, far]) {
      sockets.add(socket);
      socket.on("error", () => undefined); // the other end learns by the close below
      socket.on("close", () => [near, far].forEach((end) => end.destroy()));
    }
    near.pipe(far).pipe(near);
  });
  const listen = (port: number) => new Promise<void>((done) => server.listen(port, "127.0.0.1", done));
  await listen(0);
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the proxy has no port");
  const through = new URL(url);
  through.host = `127.0.0.1:${address.port}`;
  const cut = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      for (const socket of sockets) socket.destroy();
      sockets.clear();
    });
  return { url: through.href, cut, mend: () => listen(address.port) };
}
