import { ClientMessage, liveCloseCodes } from "@cornerway/schema";
import type { WebSocket } from "@fastify/websocket";
import type { FastifyBaseLogger } from "fastify";
import type { Line } from "./line.ts";
import type { Live } from "./live.ts";

const mostPerSecond = 60;

/** Hears one socket: `resume` first and once, then presence and pings; anything else ends it. */
export function converse(socket: WebSocket, line: Line, live: Live, log: FastifyBaseLogger): void {
  let second = 0;
  let count = 0;
  live.join(line);
  socket.on("close", () => live.leave(line));
  socket.on("message", (data, isBinary) => {
    const now = Math.floor(Date.now() / 1000);
    count = now === second ? count + 1 : 1;
    second = now;
    if (count > mostPerSecond) return line.close(liveCloseCodes.againstRules, "too many messages");
    const message = isBinary || !Buffer.isBuffer(data) ? undefined : readMessage(data.toString("utf8"));
    if (message === undefined) return refuse(line, "body-invalid", "this message is not of the live protocol");
    take(message, line, live).catch((error: unknown) => {
      log.warn({ err: error }, "a live line could not be served");
      line.close(liveCloseCodes.tooSlow, "try again");
    });
  });
}

async function take(message: ClientMessage, line: Line, live: Live): Promise<void> {
  switch (message.type) {
    case "resume":
      if (line.after !== null) return refuse(line, "body-invalid", "resume comes first and once");
      return live.resume(line, message.after);
    case "presence":
      return live.present(line, message.presence);
    case "ping":
      live.present(line, line.presence);
      return line.send({ type: "pong" });
  }
}

function refuse(line: Line, code: string, detail: string): void {
  line.send({ type: "problem", code, detail });
  line.close(liveCloseCodes.againstRules, code);
}

function readMessage(text: string): ClientMessage | undefined {
  try {
    const read = ClientMessage.safeParse(JSON.parse(text));
    return read.success ? read.data : undefined;
  } catch {
    return undefined; // not JSON: refused like any other message that is not of the protocol
  }
}
