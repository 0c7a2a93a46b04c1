import { randomUUID } from "node:crypto";
import { setTimeout } from "node:timers/promises";
import {
  liveCloseCodes,
  may,
  mayReadEntry,
  type Presence,
  type RecordEntry,
  type Role,
  type ServerMessage,
} from "@cornerway/schema";
import type { WebSocket } from "@fastify/websocket";
import type { Part } from "../services/part.ts";

/** A reader this far behind is cut off; it comes back and resumes from its last number. */
const mostUnsentBytes = 4_000_000;
const fewUnsentBytes = 500_000;
const longestPauseMs = 8_000;
const lookAgainMs = 20;
/** Operations of one message; an entry without any counts as one. */
const mostWeight = 300;

/** One open socket: whose it is, and how far it has been told. */
export class Line {
  readonly connection = randomUUID();
  readonly part: Part;
  readonly sessionId: string;
  readonly role: Role;
  /** Number of the last entry sent or passed over; null until the client says where it is. */
  after: number | null = null;
  /** What its person last said they show and hold. */
  presence: Presence | null = null;
  /** True once it has caught up and is told from memory. */
  live = false;
  readonly #socket: WebSocket;

  constructor(socket: WebSocket, part: Part, sessionId: string, role: Role) {
    this.#socket = socket;
    this.part = part;
    this.sessionId = sessionId;
    this.role = role;
  }

  get open(): boolean {
    return this.#socket.readyState === this.#socket.OPEN;
  }

  get seesDraft(): boolean {
    return may(this.part.roles, "read-draft");
  }

  send(message: ServerMessage): void {
    if (this.open) this.sendText(JSON.stringify(message));
  }

  /** A `ServerMessage` as JSON, which is written once for all who get the same. */
  sendText(text: string): void {
    if (!this.open) return;
    if (this.#socket.bufferedAmount > mostUnsentBytes) return this.close(liveCloseCodes.tooSlow, "too slow");
    this.#socket.send(text);
  }

  /** Sends those of the next entries, in order and without gaps, that this reader may see. */
  sendEntries(entries: readonly RecordEntry[]): void {
    for (const part of parcels(entries)) this.#sendParcel(part);
  }

  /** The same at the pace at which the reader takes them. */
  async sendAtTheirPace(entries: readonly RecordEntry[]): Promise<void> {
    for (const part of parcels(entries)) {
      this.#sendParcel(part);
      await this.#drained();
    }
  }

  #sendParcel(entries: readonly RecordEntry[]): void {
    const upTo = entries.at(-1)?.number ?? 0;
    this.send({ type: "entries", entries: entries.filter((entry) => this.#mayRead(entry)), upTo });
    this.after = upTo;
  }

  /** Resolves once most of what was sent has left. A reader that takes nothing for too long is cut off. */
  async #drained(): Promise<void> {
    let least = Infinity;
    let since = Date.now();
    while (this.open && this.#socket.bufferedAmount > fewUnsentBytes) {
      if (this.#socket.bufferedAmount < least) {
        least = this.#socket.bufferedAmount;
        since = Date.now();
      } else if (Date.now() - since > longestPauseMs) return this.close(liveCloseCodes.tooSlow, "too slow");
      await setTimeout(lookAgainMs);
    }
  }

  close(code: number, why: string): void {
    this.#socket.close(code, why);
  }

  #mayRead({ payload }: RecordEntry): boolean {
    return payload !== null && mayReadEntry(this.part.roles, payload.kind);
  }
}

/** Cuts a run of entries into parcels of a few hundred operations, tens of kilobytes, so that a thin line gets on by some. */
function* parcels(entries: readonly RecordEntry[]): Generator<RecordEntry[]> {
  let parcel: RecordEntry[] = [];
  let weight = 0;
  for (const entry of entries) {
    parcel.push(entry);
    weight += weightOf(entry);
    if (weight < mostWeight) continue;
    yield parcel;
    parcel = [];
    weight = 0;
  }
  if (parcel.length > 0) yield parcel;
}

const weightOf = ({ payload }: RecordEntry): number =>
  payload?.kind === "drawn" ? 1 + payload.operations.length + payload.inverse.length : 1;
