import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "node:http";

export const requestIdHeader = "request-id";

/** What a proxy may give as an id: long enough to be one, and nothing that could spoil a line of the log. */
const wellFormed = /^[A-Za-z0-9._-]{8,64}$/;

/** The id of a request: the one that one's own proxy gave it, else a new one. What callers say is not taken. */
export const requestIdOf =
  (isTrusted: (address: string) => boolean) =>
  ({ headers, socket }: Pick<IncomingMessage, "headers" | "socket">): string => {
    const given = headers[requestIdHeader];
    const believed = socket.remoteAddress !== undefined && isTrusted(socket.remoteAddress);
    return believed && typeof given === "string" && wellFormed.test(given) ? given : randomUUID();
  };
