import { once } from "node:events";
import net from "node:net";

/** A port of loopback that nothing listened on a moment ago. */
export async function freePort(): Promise<number> {
  const probe = net.createServer().listen(0, "127.0.0.1");
  await once(probe, "listening");
  const address = probe.address();
  probe.close();
  await once(probe, "close");
  return address !== null && typeof address === "object" ? address.port : 0;
}
