import { ServerMessage, type ClientMessage, type RecordEntry } from "@cornerway/schema";
import WebSocket from "ws";

/** One end of the live line, as a browser holds it. */
export class LiveClient {
  readonly messages: ServerMessage[] = [];
  readonly socket: WebSocket;
  closed: { code: number; atMs: number } | undefined;
  /** The answer that came instead of a socket. */
  refused: { status: number; body: string } | undefined;

  constructor(origin: string, path: string, headers: Record<string, string>) {
    this.socket = new WebSocket(`${origin.replace("http", "ws")}${path}`, { headers });
    this.socket.on("message", (data) => {
      const text = Buffer.isBuffer(data) ? data.toString("utf8") : "";
      this.messages.push(ServerMessage.parse(JSON.parse(text)));
    });
    this.socket.on("close", (code) => (this.closed = { code, atMs: Date.now() }));
    this.socket.on("unexpected-response", (_request, response) => {
      let body = "";
      response.on("data", (part) => (body += String(part)));
      response.on("end", () => (this.refused = { status: response.statusCode ?? 0, body }));
    });
    this.socket.on("error", () => undefined); // shows as `closed` or `refused`
  }

  async say(message: ClientMessage | string | Buffer): Promise<void> {
    if (this.socket.readyState === WebSocket.CONNECTING) await new Promise((open) => this.socket.once("open", open));
    this.socket.send(typeof message === "string" || Buffer.isBuffer(message) ? message : JSON.stringify(message));
  }

  get entries(): RecordEntry[] {
    return this.messages.flatMap((message) => (message.type === "entries" ? message.entries : []));
  }

  get upTo(): number {
    return this.messages.reduce((upTo, message) => (message.type === "entries" ? message.upTo : upTo), -1);
  }

  get here() {
    return this.messages.findLast((message) => message.type === "here")?.people ?? [];
  }

  end(): void {
    this.socket.terminate();
  }
}
