import { ClientMessage, liveCloseCodes } from "@cornerway/schema";
import fc from "fast-check";
import WebSocket from "ws";
import { z } from "zod";
import { arbitraryOf, type Components, type JsonSchema } from "./arbitrary-of-schema.ts";
import { spoiled } from "./spoil.ts";
import type { Place, Sender } from "./place.ts";

/** How a socket may end after a bad message: RFC 6455 section 7.4.1 (protocol, data, policy, size), or by our own codes. */
const goodEndings = new Set<number>([1002, 1003, 1007, 1008, 1009, ...Object.values(liveCloseCodes)]);
const mostPerSocket = 40;

type Message = string | Buffer;

function badMessage(): fc.Arbitrary<Message> {
  const schema = z.toJSONSchema(ClientMessage, { io: "input", unrepresentable: "any" }) as JsonSchema & {
    $defs?: Components;
  };
  const text = spoiled(arbitraryOf(schema, schema.$defs ?? {})).map((value) => JSON.stringify(value) ?? "");
  return fc.oneof(
    { weight: 6, arbitrary: text },
    { weight: 1, arbitrary: text.map((one) => one.slice(0, -1)) },
    { weight: 1, arbitrary: fc.uint8Array({ maxLength: 200 }).map((bytes) => Buffer.from(bytes)) },
    { weight: 1, arbitrary: fc.constantFrom<Message>("", "x".repeat(40_000), "[".repeat(9_000), '{"type":"ping"}') },
  );
}

/** Says bad things to the live line until `count` were said; what is wrong with how it took them. */
export async function runBadMessages(
  { app, ids }: Place,
  senders: readonly Sender[],
  { count, seed }: { count: number; seed: number },
): Promise<string[]> {
  const address = app.server.address();
  if (address === null || typeof address === "string") throw new Error("the service does not listen");
  const origin = `http://127.0.0.1:${address.port}`;
  const messages = fc.sample(badMessage(), { seed, numRuns: count });
  const faults: string[] = [];
  const members = senders.filter(({ name }) => !["outsider", "nobody"].includes(name));
  for (let at = 0, turn = 0; at < messages.length; turn += 1) {
    const sender = members[turn % members.length];
    if (sender === undefined) break;
    const headers = { ...sender.headers, origin };
    const socket = new WebSocket(`${origin.replace("http", "ws")}/api/projects/${ids["projectId"]}/live`, { headers });
    at += await sayUntilClosed(socket, messages.slice(at, at + mostPerSocket), faults);
  }
  return faults;
}

/** How many messages were said before the socket was closed, by us or by the service. */
function sayUntilClosed(socket: WebSocket, messages: readonly Message[], faults: string[]): Promise<number> {
  return new Promise((settle) => {
    let said = 0;
    const next = () => {
      const message = messages[said];
      if (message === undefined) return socket.close(1000);
      said += 1;
      socket.send(message, () => setImmediate(next)); // a closed socket calls back with an error, and ends below
    };
    socket.once("open", () => {
      socket.send(JSON.stringify({ type: "resume", after: 0 }));
      next();
    });
    socket.on("error", () => undefined);
    socket.once("unexpected-response", (_request, response) => {
      faults.push(`a socket was answered ${response.statusCode}`);
      settle(messages.length);
    });
    socket.once("close", (code) => {
      if (code !== 1000 && !goodEndings.has(code))
        faults.push(`a socket ended with ${code} after ${String(messages[said - 1]).slice(0, 200)}`);
      settle(Math.max(1, said));
    });
  });
}
