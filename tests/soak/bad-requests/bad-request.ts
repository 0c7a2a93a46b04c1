import fc from "fast-check";
import { arbitraryOf, type Components, type JsonSchema } from "./arbitrary-of-schema.ts";
import { odd, spoiled } from "./spoil.ts";

/** As much of an OpenAPI 3.1 document as tells what each route takes. */
export interface ApiDocument {
  paths: Record<string, Record<string, Operation>>;
  components: { schemas: Components };
}

interface Operation {
  parameters?: { name: string; in: string; schema: JsonSchema }[];
  requestBody?: { content: Record<string, { schema: JsonSchema }> };
}

export interface BadRequest {
  method: string;
  /** Pattern of the route, for the count. */
  route: string;
  url: string;
  headers: Record<string, string>;
  payload: string | undefined;
  /** Index of the one who sends it; see `senders`. */
  sender: number;
}

export interface Known {
  /** A real id for a parameter's name, so that a request gets past the first door. */
  ids: Record<string, string>;
  senders: number;
}

/** Requests to any of the routes that are wrong in one way or several. */
export function badRequest(document: ApiDocument, known: Known): fc.Arbitrary<BadRequest> {
  const routes = Object.entries(document.paths).flatMap(([route, operations]) =>
    Object.entries(operations).map(([method, operation]) => requestTo(document, known, { method, route, operation })),
  );
  return fc.oneof(...routes);
}

function requestTo(
  { components }: ApiDocument,
  { ids, senders }: Known,
  { method, route, operation }: { method: string; route: string; operation: Operation },
): fc.Arbitrary<BadRequest> {
  const body = Object.values(operation.requestBody?.content ?? {})[0]?.schema;
  const queries = (operation.parameters ?? []).filter((one) => one.in === "query");
  return fc
    .record({
      sender: fc.nat(senders - 1),
      ids: fc.dictionary(fc.constantFrom(...idNames(route), "none"), fc.constantFrom(...odd), { maxKeys: 1 }),
      query: fc.option(
        fc.tuple(fc.constantFrom(...queries.map(({ name }) => name), "unknown"), fc.constantFrom(...odd)),
      ),
      headers: oddHeaders,
      payload: body === undefined ? oddPayload : payloadOf(spoiled(arbitraryOf(body, components))),
      verb: fc.oneof(
        { weight: 30, arbitrary: fc.constant(method) },
        { weight: 1, arbitrary: fc.constantFrom("put", "patch", "options", "trace") },
      ),
    })
    .map(({ sender, ids: oddIds, query, headers, payload, verb }) => ({
      ...{ method: verb.toUpperCase(), route: `${method.toUpperCase()} ${route}`, sender },
      url:
        route.replaceAll(/\{(\w+)\}/g, (_, name: string) =>
          name in oddIds ? encoded(oddIds[name]) : (ids[name] ?? "00000000-0000-4000-8000-000000000000"),
        ) + (query === null ? "" : `?${query[0]}=${encoded(query[1])}`),
      ...payloadWithHeaders(payload, headers, ["get", "head"].includes(method)),
    }));
}

const idNames = (route: string): string[] => [...route.matchAll(/\{(\w+)\}/g)].map(([, name = ""]) => name);

/** Percent-encoded; lone surrogates, which have no encoding, and every third text go as they are. */
function encoded(value: unknown): string {
  const text = (typeof value === "string" ? value : JSON.stringify(value)).slice(0, 2_000).toWellFormed();
  return text.length % 3 === 0 ? encodeURI(text).replaceAll("%25", "%") : encodeURIComponent(text);
}

const oddHeaders: fc.Arbitrary<Record<string, string>> = fc.oneof(
  { weight: 8, arbitrary: fc.constant({}) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Record<string, string>>(
      ...[
        { "content-type": "text/plain" },
        { "content-type": "application/xml" },
        { "content-type": "application/json; charset=utf-16" },
      ],
      ...[
        { "content-type": "multipart/form-data; boundary=x" },
        { "content-type": "" },
        { "content-type": "application/json;;;=" },
      ],
      ...[
        { "csrf-token": "x".repeat(3_000) },
        { cookie: "cornerway_session=" + "y".repeat(4_000) },
        { cookie: "a=b; cornerway_session=%00" },
      ],
      ...[
        { authorization: "Bearer x" },
        { authorization: "Basic Zm9v" },
        { authorization: `Bearer ${"z".repeat(4_000)}` },
      ],
      ...[
        { "scheme-version": "0" },
        { "scheme-version": "9".repeat(400) },
        { origin: "null" },
        { origin: "https://other.example" },
      ],
      ...[
        { "idempotency-key": "" },
        { "idempotency-key": "k".repeat(5_000) },
        { "idempotency-key": "a b\tc" },
        { "if-none-match": '"' },
      ],
      ...[
        { "request-id": "1".repeat(500) },
        { "x-forwarded-for": "1.2.3.4" },
        { host: "other.example" },
        { accept: "x/y;q=9" },
      ],
      ...[
        { "accept-encoding": "br;q=0,*;q=0" },
        { "content-encoding": "gzip" },
        { "transfer-encoding": "chunked" },
        { upgrade: "websocket" },
      ],
    ),
  },
);

const oddPayload: fc.Arbitrary<string | undefined> = fc.constantFrom(undefined, undefined, "{}", "x", "null");

/** JSON as it should be, or cut, or with more behind it; deep beyond what parsers of little stack take. */
const payloadOf = (value: fc.Arbitrary<unknown>): fc.Arbitrary<string | undefined> =>
  fc.tuple(value, fc.nat(40)).map(([one, how]) => {
    const text = JSON.stringify(one) ?? "";
    if (how === 0) return text.slice(0, Math.floor(text.length / 2));
    if (how === 1) return `${text}}`;
    if (how === 2) return `${"[".repeat(20_000)}${"]".repeat(20_000)}`;
    if (how === 3) return `\ufeff${text}`;
    if (how === 4) return text.replace(/:\s*("[^"]*"|\d+)/, ":1e400");
    if (how === 5) return text.replace("{", '{"__proto__":{"x":1},');
    return how === 6 ? "A".repeat(300_000) : text;
  });

function payloadWithHeaders(payload: string | undefined, headers: Record<string, string>, isRead: boolean) {
  if (payload === undefined || isRead) return { headers, payload: undefined };
  return { headers: { "content-type": "application/json", ...headers }, payload };
}
