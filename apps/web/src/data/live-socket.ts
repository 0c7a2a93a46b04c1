import { liveCloseCodes, ServerMessage } from "@cornerway/schema";
import type { ClientMessage, Presence } from "@cornerway/schema";

export type Entries = Extract<ServerMessage, { type: "entries" }>;
export type Here = Extract<ServerMessage, { type: "here" }>["people"];

export type Assessing = Extract<ServerMessage, { type: "assessing" }>["run"];

export interface LiveListener {
  entries(message: Entries): void;
  here(people: Here): void;
  /** How far the check of a revision is. */
  assessing(run: Assessing): void;
  /** True when the line holds, false when it dropped. */
  line(up: boolean): void;
  /** What this page holds is true no longer: who is signed in, in which roles, or the whole record. */
  stale(): void;
}

const staleCodes = new Set<number>([liveCloseCodes.signedOut, liveCloseCodes.recordUnknown]);

/** Less than the 15 s after which presence expires. */
const pingEveryMs = 6_000;
const silenceMeansDownMs = 20_000;

/** One live line to a project: resumes after the last number seen, comes back by itself, ever less eagerly. */
export class LiveSocket {
  readonly #address: string;
  readonly #listener: LiveListener;
  #after: number;
  #socket: WebSocket | null = null;
  #tries = 0;
  #heardAt = 0;
  #presence: Presence | null = null;
  #retry: ReturnType<typeof setTimeout> | undefined;
  #beat: ReturnType<typeof setInterval> | undefined;
  #ended = false;

  constructor(address: string, after: number, listener: LiveListener) {
    this.#address = address;
    this.#after = after;
    this.#listener = listener;
    this.#open();
  }

  /** Says what this page shows and holds; said again at each beat until it changes. */
  tell(presence: Presence): void {
    this.#presence = presence;
    this.#say({ type: "presence", presence });
  }

  end(): void {
    this.#ended = true;
    clearTimeout(this.#retry);
    clearInterval(this.#beat);
    this.#socket?.close(1000);
  }

  #open(): void {
    const socket = new WebSocket(this.#address);
    this.#socket = socket;
    socket.addEventListener("open", () => this.#opened());
    socket.addEventListener("message", (event) => this.#heard(event.data));
    socket.addEventListener("close", ({ code }) => this.#closed(socket, code));
  }

  #opened(): void {
    this.#heardAt = Date.now();
    this.#say({ type: "resume", after: this.#after });
    if (this.#presence !== null) this.tell(this.#presence);
    clearInterval(this.#beat);
    this.#beat = setInterval(() => this.#pulse(), pingEveryMs);
  }

  #pulse(): void {
    if (Date.now() - this.#heardAt > silenceMeansDownMs) return this.#socket?.close(4000);
    this.#say(this.#presence === null ? { type: "ping" } : { type: "presence", presence: this.#presence });
    this.#say({ type: "ping" });
  }

  #heard(data: unknown): void {
    this.#heardAt = Date.now();
    const message = ServerMessage.parse(JSON.parse(String(data)));
    if (message.type === "entries") {
      this.#tries = 0;
      this.#after = Math.max(this.#after, message.upTo);
      this.#listener.line(true);
      this.#listener.entries(message);
    } else if (message.type === "here") {
      this.#listener.here(message.people);
    } else if (message.type === "assessing") {
      this.#listener.assessing(message.run);
    }
  }

  #closed(socket: WebSocket, code: number): void {
    if (socket !== this.#socket || this.#ended) return;
    clearInterval(this.#beat);
    if (staleCodes.has(code)) this.#listener.stale();
    this.#listener.line(false);
    this.#tries += 1;
    this.#retry = setTimeout(() => this.#open(), Math.min(10_000, 250 * 2 ** this.#tries));
  }

  #say(message: ClientMessage): void {
    if (this.#socket?.readyState === WebSocket.OPEN) this.#socket.send(JSON.stringify(message));
  }
}
