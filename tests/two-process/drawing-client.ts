import { randomUUID } from "node:crypto";
import {
  applyOperations,
  DraftActDone,
  emptyScheme,
  Problem,
  type RecordEntry,
  ServerMessage,
  type DraftAct,
  type Operation,
  type Scheme,
} from "@cornerway/schema";
import WebSocket from "ws";

/** The processes that are up, in the order in which a client tries them. */
export interface Processes {
  origins: string[];
}

export interface SignedIn {
  cookie: string;
  csrfToken: string;
}

const pauseMs = 50;
const pause = () => new Promise((resume) => setTimeout(resume, pauseMs));

/**
 * Someone who draws and watches: sends each act until it is acknowledged, under one id, to whichever process answers,
 * and builds the scheme from nothing but the entries that the live line brings.
 */
export class DrawingClient {
  /** Ids of acts the service has acknowledged, with the numbers it gave them. */
  readonly acknowledged = new Map<string, DraftActDone>();
  readonly numbers: number[] = [];
  scheme: Scheme = emptyScheme;
  draftNumber = 0;
  upTo = 0;
  repeats = 0;
  conflicts = 0;
  connections = 0;
  /** Why each line ended, RFC 6455 section 7.4.1; 1006 when the other end vanished. */
  readonly closed: number[] = [];
  readonly #processes: Processes;
  readonly #projectId: string;
  readonly #session: SignedIn;
  readonly #strict: boolean;
  #turn: number;
  #socket: WebSocket | undefined;
  #ended = false;

  /** `strict` parses every message by its schema; the rest are read as they come, to keep twenty clients on one core. */
  constructor(
    processes: Processes,
    projectId: string,
    session: SignedIn,
    { turn, strict }: { turn: number; strict: boolean },
  ) {
    this.#processes = processes;
    this.#projectId = projectId;
    this.#session = session;
    this.#turn = turn;
    this.#strict = strict;
    this.#connect();
  }

  /** Draws until the service acknowledges; a conflict is drawn again on the draft that the conflict names. */
  async draw(operations: Operation[]): Promise<void> {
    let act: DraftAct = { id: randomUUID(), base: this.draftNumber, operations };
    for (;;) {
      const answer = await this.#post(act);
      if (answer === undefined) {
        this.repeats += 1;
        this.#turn += 1;
        await pause();
        continue;
      }
      if ("entry" in answer) return void this.acknowledged.set(act.id, answer);
      if (answer.conflict === undefined) throw new Error(`refused: ${JSON.stringify(answer)}`);
      this.conflicts += 1;
      act = { ...act, base: answer.conflict.draftNumber };
    }
  }

  end(): void {
    this.#ended = true;
    this.#socket?.terminate();
  }

  #origin(): string {
    const { origins } = this.#processes;
    const origin = origins[this.#turn % origins.length];
    if (origin === undefined) throw new Error("no process is up");
    return origin;
  }

  /** Undefined when no answer came, or one that asks to try again. */
  async #post(act: DraftAct): Promise<DraftActDone | Problem | undefined> {
    const { cookie, csrfToken } = this.#session;
    const headers = { cookie, "csrf-token": csrfToken, "content-type": "application/json" };
    try {
      const url = `${this.#origin()}/api/projects/${this.#projectId}/draft/acts`;
      const response = await fetch(url, { method: "POST", headers, body: JSON.stringify(act) });
      const body: unknown = await response.json();
      if (response.status >= 500) return undefined;
      return response.ok ? DraftActDone.parse(body) : Problem.parse(body);
    } catch {
      return undefined; // the process went away under the request: whether it was done shows when it is sent again
    }
  }

  #connect(): void {
    if (this.#ended) return;
    this.connections += 1;
    const origin = this.#origin();
    const address = `${origin.replace("http", "ws")}/api/projects/${this.#projectId}/live`;
    const socket = new WebSocket(address, { headers: { cookie: this.#session.cookie, origin } });
    this.#socket = socket;
    socket.on("open", () => socket.send(JSON.stringify({ type: "resume", after: this.upTo })));
    socket.on("message", (data) => this.#hear(Buffer.isBuffer(data) ? data.toString("utf8") : ""));
    socket.on("error", () => undefined); // followed by close
    socket.on("close", (code) => {
      this.closed.push(code);
      this.#turn += 1;
      void pause().then(() => this.#connect());
    });
  }

  #hear(text: string): void {
    const message: ServerMessage = this.#strict ? ServerMessage.parse(JSON.parse(text)) : JSON.parse(text);
    if (message.type !== "entries") return;
    for (const entry of message.entries) this.#take(entry);
    this.upTo = message.upTo;
  }

  #take({ number, payload }: RecordEntry): void {
    this.numbers.push(number);
    if (payload?.kind !== "drawn") return;
    const applied = applyOperations(this.scheme, payload.operations);
    if (!applied.ok) throw new Error(`entry ${number} does not apply: ${JSON.stringify(applied.refusal)}`);
    this.scheme = applied.scheme;
    this.draftNumber = payload.draftNumber;
  }
}
