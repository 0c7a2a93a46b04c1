import type { IncomingMessage, Server, ServerResponse } from "node:http";
import { brotliDecompressSync, gunzipSync, inflateSync } from "node:zlib";
import type { Described } from "./described.ts";

/** Reads every answer that leaves a server and holds it to the API description, by a validator that knows nothing of zod. */
export class Witness {
  /** What did not agree with the description, one sentence each. */
  readonly faults: string[] = [];
  readonly seen = new Set<string>();
  readonly #described: Described;

  constructor(described: Described) {
    this.#described = described;
  }

  watch(server: Server): void {
    server.prependListener("request", (request: IncomingMessage, response: ServerResponse) => {
      const parts: Buffer[] = [];
      const write = response.write.bind(response);
      const end = response.end.bind(response);
      const keep = (part: unknown): void => {
        if (typeof part === "string" || part instanceof Uint8Array) parts.push(Buffer.from(part));
      };
      response.write = function (this: ServerResponse, ...given: Parameters<typeof write>) {
        keep(given[0]);
        return write(...given);
      } as typeof write;
      response.end = function (this: ServerResponse, ...given: Parameters<typeof end>) {
        keep(given[0]);
        return end(...given);
      } as typeof end;
      response.on("finish", () => this.hear(request, response, Buffer.concat(parts)));
    });
  }

  hear({ method = "", url = "" }: IncomingMessage, response: ServerResponse, bytes: Buffer): void {
    const address = decodeURI(url.split("?", 1)[0] ?? "");
    const [path, described] = this.#described.operation(method, address) ?? [];
    if (path === undefined || described === undefined) return;
    const status = String(response.statusCode);
    const what = `${method} ${path} ${status}`;
    this.seen.add(what);
    const answer = described.responses[status];
    if (answer === undefined) return this.#fault(what, `is not described: ${bytes.toString("utf8").slice(0, 300)}`);
    if (bytes.length === 0) return;
    const type = String(response.getHeader("content-type")).split(";", 1)[0] ?? "";
    if (answer.content?.[type] === undefined) return this.#fault(what, `is ${type}, which is not described`);
    const place = ["paths", path, method.toLowerCase(), "responses", status, "content", type, "schema"];
    const text = decoded(bytes, String(response.getHeader("content-encoding"))).toString("utf8");
    const body = type.endsWith("json") ? (JSON.parse(text) as unknown) : text;
    const disagrees = this.#described.disagreement(place.map(escaped).join("/"), body);
    if (disagrees !== undefined) this.#fault(what, disagrees.slice(0, 600));
  }

  #fault(what: string, words: string): void {
    this.faults.push(`${what} ${words}`);
  }
}

/** One part of a JSON pointer (RFC 6901) in the fragment of an address. */
const escaped = (part: string) => encodeURIComponent(part.replaceAll("~", "~0").replaceAll("/", "~1"));

function decoded(bytes: Buffer, encoding: string): Buffer {
  if (encoding === "br") return brotliDecompressSync(bytes);
  if (encoding === "gzip") return gunzipSync(bytes);
  return encoding === "deflate" ? inflateSync(bytes) : bytes;
}
