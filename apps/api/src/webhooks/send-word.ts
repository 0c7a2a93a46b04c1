import { lookup } from "node:dns/promises";
import http from "node:http";
import https from "node:https";
import { addressFault, hostOf } from "./address-fault.ts";
import { isRefusedAddress } from "./refused-address.ts";

/** The status that came back, or one sentence on why none did. */
export type Sent = { status: number; error: null } | { status: null; error: string };

export interface SendOptions {
  loopbackToo: boolean;
  signal: AbortSignal;
  /** Finds the addresses of a name. */
  resolve?: (host: string) => Promise<{ address: string; family: number }[]>;
}

const limitMs = 10_000;
const mostAnswerBytes = 64 * 1024;

/**
 * Posts a body to an address on the open internet. The name is asked for once, every address it gives must be public,
 * and the connection goes to the one that was looked at; redirects are not followed; time and answer are limited.
 */
export async function sendWord(
  url: URL,
  { body, headers }: { body: string; headers: Record<string, string> },
  { loopbackToo, signal, resolve = resolveAll }: SendOptions,
): Promise<Sent> {
  const fault = addressFault(url, { loopbackToo });
  if (fault !== undefined) return failed(fault);
  const limit = new AbortController();
  const giveUp = () => limit.abort();
  const timer = setTimeout(giveUp, limitMs);
  signal.addEventListener("abort", giveUp, { once: true });
  try {
    const found = await withinLimit(resolve(hostOf(url)), limit.signal);
    const [first] = found;
    if (first === undefined) return failed("the name has no address");
    if (found.some(({ address }) => isRefusedAddress(address, { loopbackToo })))
      return failed("the name leads to an address that is not on the open internet");
    return { status: await post(url, first, { body, headers, signal: limit.signal }), error: null };
  } catch (error) {
    if (signal.aborted) return failed("the service is stopping");
    return failed(limit.signal.aborted ? `no answer within ${limitMs / 1000} s` : reasonOf(error));
  } finally {
    clearTimeout(timer);
    signal.removeEventListener("abort", giveUp);
  }
}

const resolveAll = (host: string) => lookup(host, { all: true });

const failed = (error: string): Sent => ({ status: null, error });

/** The code of a fault of the network, which says nothing of this machine; its words might. */
const reasonOf = (error: unknown): string =>
  error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "the connection failed";

function withinLimit<T>(work: Promise<T>, signal: AbortSignal): Promise<T> {
  return new Promise((resolve, reject) => {
    signal.addEventListener("abort", () => reject(new Error("too slow")), { once: true });
    work.then(resolve, reject);
  });
}

function post(
  url: URL,
  to: { address: string; family: number },
  { body, headers, signal }: { body: string; headers: Record<string, string>; signal: AbortSignal },
): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = (url.protocol === "https:" ? https : http).request(url, {
      method: "POST",
      agent: false,
      signal,
      headers: { ...headers, "content-length": String(Buffer.byteLength(body)) },
      // The checked address and no other, whatever the name leads to by now.
      lookup: (_host, options, found) =>
        options.all === true ? found(null, [to]) : found(null, to.address, to.family),
    });
    request.on("error", reject);
    request.on("response", (answer) => {
      let bytes = 0;
      answer.on("data", (part: Buffer) => {
        bytes += part.length;
        if (bytes > mostAnswerBytes) request.destroy();
      });
      answer.on("close", () => resolve(answer.statusCode ?? 0));
      answer.on("error", () => resolve(answer.statusCode ?? 0)); // cut off above, or by them: the status came
    });
    request.end(body);
  });
}
