import { liveCloseCodes, recordKinds, type Presence, type ServerMessage } from "@cornerway/schema";
import type { FastifyBaseLogger } from "fastify";
import { readAssessmentRun } from "../services/run-assessment.ts";
import type { Connection } from "../store/connection.ts";
import { lastNumber, readEntries } from "../store/record-rows.ts";
import { readStanding } from "../store/session-rows.ts";
import type { Line } from "./line.ts";
import { Listener } from "./listener.ts";
import { PresenceBoard, type Someone, type Word } from "./presence-board.ts";
import { Room } from "./room.ts";

const standingEveryMs = 500;
const tellPresenceEveryMs = 100;

/** All open sockets of this process, by project: what is new goes out, who is here goes round, who left is cut off. */
export class Live {
  readonly #db: Connection;
  readonly #log: FastifyBaseLogger;
  readonly #listener: Listener;
  readonly #board = new PresenceBoard(Date.now);
  readonly #rooms = new Map<string, Promise<Room>>();
  readonly #lines = new Set<Line>();
  readonly #presenceChanged = new Set<string>();
  readonly #unsaid = new Map<string, Word>();
  #timers: NodeJS.Timeout[] = [];
  #checking = false;

  constructor(db: Connection, url: string, log: FastifyBaseLogger) {
    this.#db = db;
    this.#log = log;
    const heard = {
      entry: (projectId: string, number: number) => (number === 0 ? this.#end(projectId) : this.#advance(projectId)),
      progress: (projectId: string, letter: string) => void this.#tellProgress(projectId, letter),
      word: (body: unknown) => this.#changed(this.#board.takeFrom(body)),
      readAgain: () => [...this.#rooms.keys()].forEach((projectId) => this.#advance(projectId)),
    };
    this.#listener = new Listener(url, heard, log);
  }

  async start(): Promise<void> {
    await this.#listener.start();
    this.#timers = [
      setInterval(() => void this.#checkStanding(), standingEveryMs),
      setInterval(() => this.#tellPresence(), tellPresenceEveryMs),
    ];
  }

  /** How many sockets are open. */
  get size(): number {
    return this.#lines.size;
  }

  join(line: Line): void {
    this.#lines.add(line);
    this.present(line, line.presence);
  }

  leave(line: Line): void {
    if (!this.#lines.delete(line)) return;
    this.#say({ ...wordOf(line, null), gone: true });
    const { projectId } = line.part;
    const left = (room: Room) => {
      room.lines.delete(line);
      if (room.lines.size === 0 && !this.#someoneIn(projectId)) this.#rooms.delete(projectId);
    };
    this.#rooms.get(projectId)?.then(left, () => undefined); // one that could not be opened holds nobody
  }

  async resume(line: Line, after: number): Promise<void> {
    const room = await this.#room(line.part.projectId);
    if (!line.open) return;
    room.lines.add(line);
    await room.resume(line, after);
  }

  /** Someone said what they show and hold, or only that they are still there. */
  present(line: Line, presence: Presence | null): void {
    line.presence = presence;
    this.#say(wordOf(line, presence));
  }

  /** Cuts every socket; their clients come back to a process that stays. */
  async close(): Promise<void> {
    for (const timer of this.#timers) clearInterval(timer);
    for (const line of this.#lines) line.close(liveCloseCodes.goingAway, "the service stops");
    await this.#listener.close();
  }

  #someoneIn(projectId: string): boolean {
    return [...this.#lines].some(({ part }) => part.projectId === projectId);
  }

  #room(projectId: string): Promise<Room> {
    const known = this.#rooms.get(projectId);
    if (known !== undefined) return known;
    const opened = this.#openRoom(projectId);
    this.#rooms.set(projectId, opened);
    opened.catch(() => this.#rooms.delete(projectId)); // whoever asked for it gets the fault; the next one tries anew
    return opened;
  }

  async #openRoom(projectId: string): Promise<Room> {
    const last = (await lastNumber(this.#db, projectId)) ?? 0;
    return new Room(last, (after, limit) => readEntries(this.#db, projectId, { after, limit, kinds: recordKinds }));
  }

  /** The project was erased with its record: whoever watches it is told to load it anew, and finds what is there now. */
  #end(projectId: string): void {
    this.#rooms.delete(projectId);
    for (const line of this.#lines)
      if (line.part.projectId === projectId) line.close(liveCloseCodes.recordUnknown, "the project was erased");
  }

  #advance(projectId: string): void {
    const room = this.#rooms.get(projectId);
    room
      ?.then((open) => open.advance())
      .catch((error: unknown) => this.#log.warn({ err: error, projectId }, "could not read the record; trying again"));
  }

  /** Passing like presence: whoever misses it reads the run, or hears its end from the record. */
  async #tellProgress(projectId: string, letter: string): Promise<void> {
    const lines = [...this.#lines].filter(({ part }) => part.projectId === projectId);
    if (lines.length === 0) return;
    try {
      const read = await readAssessmentRun(this.#db, projectId, letter);
      if (read.ok) for (const line of lines) line.send({ type: "assessing", run: read.value });
    } catch (error) {
      this.#log.warn({ err: error, projectId }, "could not say how far an assessment is");
    }
  }

  #say(word: Word): void {
    this.#changed(this.#board.take(word));
    this.#unsaid.set(word.connection, word);
  }

  #changed(projectId: string | undefined): void {
    if (projectId !== undefined) this.#presenceChanged.add(projectId);
  }

  #tellPresence(): void {
    for (const word of this.#unsaid.values()) this.#tellOthers(word);
    this.#unsaid.clear();
    this.#board.expire().forEach((projectId) => this.#changed(projectId));
    for (const projectId of this.#presenceChanged) this.#tellRoom(projectId);
    this.#presenceChanged.clear();
  }

  /** A drag too long for a notice is told without what is dragged. */
  #tellOthers(word: Word): void {
    if (this.#listener.tell(word) || word.presence === null) return;
    this.#listener.tell({ ...word, presence: { ...word.presence, dragging: null } });
  }

  #tellRoom(projectId: string): void {
    const all = this.#board.people(projectId);
    const withoutDrags = all.map((one) => ({ ...one, presence: one.presence && { ...one.presence, dragging: null } }));
    const [toDrafters, toOthers] = [textOfHere(all), textOfHere(withoutDrags)];
    for (const line of this.#lines)
      if (line.part.projectId === projectId) line.sendText(line.seesDraft ? toDrafters : toOthers);
  }

  /** Whoever signed out, ran out of time or lost a role since is cut off: twice a second, in one query for all. */
  async #checkStanding(): Promise<void> {
    if (this.#checking || this.#lines.size === 0) return;
    this.#checking = true;
    try {
      const asked = [...this.#lines];
      const standing = await readStanding(this.#db, distinct(asked));
      const roles = new Map(standing.map((row) => [keyOf(row), row.roles.join()]));
      for (const line of asked) {
        if (roles.get(keyOf(askOf(line))) !== [...line.part.roles].sort().join())
          line.close(liveCloseCodes.signedOut, "signed out");
      }
    } catch (error) {
      this.#log.warn({ err: error }, "could not check who is signed in; trying again");
    } finally {
      this.#checking = false;
    }
  }
}

const wordOf = ({ connection, part, role }: Line, presence: Presence | null): Word => ({
  ...{ projectId: part.projectId, connection, personId: part.person.id, name: part.person.name },
  ...{ role, presence, gone: false },
});

const textOfHere = (people: Someone[]): string => JSON.stringify({ type: "here", people } satisfies ServerMessage);

const askOf = ({ sessionId, part }: Line) => ({ sessionId, projectId: part.projectId });

const keyOf = ({ sessionId, projectId }: { sessionId: string; projectId: string }) => `${sessionId} ${projectId}`;

const distinct = (lines: readonly Line[]) => [
  ...new Map(lines.map((line) => [keyOf(askOf(line)), askOf(line)])).values(),
];
