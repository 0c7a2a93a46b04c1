import { digestOf, emptyScheme } from "@cornerway/schema";
import type { Operation } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { DraftStore } from "../../../src/data/draft/draft-store.ts";
import type { DraftPorts } from "../../../src/data/draft/draft-store.ts";
import { nothingKept, type Kept } from "../../../src/data/draft/kept.ts";
import { NoAnswer } from "../../../src/data/http.ts";
import { seededRandom } from "../../../src/drawing/seeded-random.ts";
import { ModelOffice } from "../../support/model-office.ts";
import { unitAt } from "../../support/schemes.ts";

const runs = 320;
const steps = 60;

/** Everything that is yet to happen, let happen in an order chance picks: answers and entries overtake each other. */
class Chance {
  readonly roll: () => number;
  #due: (() => void)[] = [];

  constructor(seed: string) {
    this.roll = seededRandom(seed);
  }

  pick = <T>(from: readonly T[]): T | undefined => from[Math.floor(this.roll() * from.length)];

  soon(call: () => void): () => void {
    this.#due.push(call);
    return () => {
      this.#due = this.#due.filter((each) => each !== call);
    };
  }

  async happen(): Promise<void> {
    const [call] = this.#due.splice(Math.floor(this.roll() * this.#due.length), 1);
    call?.();
    await quiet();
  }

  get isQuiet(): boolean {
    return this.#due.length === 0;
  }
}

/** Longer than the longest chain of promises a store hangs on one answer; a timer would take a millisecond each time. */
const ticks = 24;
const quiet = async () => {
  for (let tick = 0; tick < ticks; tick += 1) await Promise.resolve();
};

/** One person's browser: pages come and go, what is kept stays; the line loses questions and answers and repeats questions. */
class Client implements DraftPorts {
  readonly name: string;
  readonly #office: ModelOffice;
  readonly #chance: Chance;
  kept: Kept = nothingKept;
  lossy = true;
  store!: DraftStore;
  #seen = 0;
  #ids = 0;
  /** Acts that were ever on this person's pages, each with the one it takes back. */
  readonly drawn = new Map<string, string | null>();
  readonly answeredAway = new Set<string>();
  readonly acknowledged = new Set<string>();
  #page = 0;

  constructor(name: string, office: ModelOffice, chance: Chance) {
    this.name = name;
    this.#office = office;
    this.#chance = chance;
    this.openPage();
  }

  /** A page opens on the draft as it is now, and takes up what the one before kept. */
  openPage(): void {
    this.#page += 1;
    this.#seen = this.#office.number;
    this.store = new DraftStore(
      this.#office.draft(),
      portsOfPage(this, this.#page, () => this.#page),
    );
    this.store.adopt(this.kept);
  }

  closePage(): void {
    this.store.stop();
  }

  fetchDraft = () => this.#overTheLine(() => this.#office.draft());

  sendAct: DraftPorts["sendAct"] = (act) =>
    this.#overTheLine(() => {
      const done = this.#office.take(this.name, act);
      if (this.lossy && this.#chance.roll() < 0.15) this.#office.take(this.name, act);
      this.acknowledged.add(act.id);
      return done;
    });

  keep = async (kept: Kept): Promise<void> => {
    for (const { id, undoes } of kept.pending) this.drawn.set(id, undoes);
    this.kept = structuredClone(kept);
  };

  newId = (): string => `${this.name}${String((this.#ids += 1)).padStart(4, "0")}`;

  now = () => 0;
  later: DraftPorts["later"] = (call) => this.#chance.soon(call);

  /** Brings the entries this page has not seen, all or some of them. */
  bringEntries(all = false): void {
    const { entries } = this.#office;
    const upTo = all ? entries.length : this.#seen + Math.ceil(this.#chance.roll() * (entries.length - this.#seen));
    this.store.receive(entries.slice(this.#seen, upTo));
    this.#seen = Math.max(this.#seen, upTo);
  }

  #overTheLine<T>(answer: () => T): Promise<T> {
    return new Promise((done, failed) => {
      const lost = () => failed(new NoAnswer(new TypeError("lost")));
      this.#chance.soon(() => {
        if (this.lossy && this.#chance.roll() < 0.2) return lost();
        try {
          const value = answer();
          if (this.lossy && this.#chance.roll() < 0.2) return void this.#chance.soon(lost);
          this.#chance.soon(() => done(value));
        } catch (error) {
          this.#chance.soon(() => failed(error));
        }
      });
    });
  }
}

/** The ports of one page: what it still hears after it closed changes nothing that is kept. */
const portsOfPage = (client: Client, page: number, present: () => number): DraftPorts => ({
  fetchDraft: client.fetchDraft,
  sendAct: client.sendAct,
  keep: (kept) => (present() === page ? client.keep(kept) : Promise.resolve()),
  newId: client.newId,
  now: client.now,
  later: client.later,
});

const corners = [0, 1, 2, 3, 4, 5] as const;

/** One act of a person on what the page shows: set, move, turn or take away one of a few units. */
function anyAct(client: Client, chance: Chance): Operation[] {
  const { containers } = client.store.getSnapshot().scheme;
  const at = chance.pick(corners) ?? 0;
  const id = `u${at}`;
  const there = containers.some((unit) => unit.id === id);
  if (!there) return [{ kind: "container.place", container: unitAt(id, `G${at}`, 0, at * 2500, 0) }];
  const roll = chance.roll();
  if (roll < 0.12) return [{ kind: "container.remove", id }];
  if (roll < 0.4) return [{ kind: "container.turn", id, turnMdeg: Math.floor(chance.roll() * 4) * 90_000 }];
  return [{ kind: "container.move", id, xUm: Math.floor(chance.roll() * 50) * 100_000, yUm: at * 2_500_000, zUm: 0 }];
}

function anyStep(client: Client, chance: Chance): void {
  const roll = chance.roll();
  if (roll < 0.42) client.store.draw(anyAct(client, chance));
  else if (roll < 0.5) client.store.undo();
  else if (roll < 0.54) client.store.redo();
  else if (roll < 0.8) client.bringEntries();
  else if (roll < 0.86) {
    client.closePage();
    client.openPage();
  } else answerOne(client, chance);
}

function answerOne(client: Client, chance: Chance): void {
  const conflict = chance.pick(client.store.getSnapshot().conflicts);
  if (conflict === undefined) return;
  client.answeredAway.add(conflict.act.id);
  client.store.answerConflict(conflict.act.id, chance.roll() < 0.5 ? "mine" : "theirs");
}

/** The line is whole again: everything arrives, every ghost is answered, until nothing is left to happen. */
async function comeToRest(clients: readonly Client[], chance: Chance): Promise<void> {
  for (const client of clients) client.lossy = false;
  for (let turn = 0; turn < 4000; turn += 1) {
    await chance.happen();
    for (const client of clients) {
      client.bringEntries(true);
      answerOne(client, chance);
    }
    const rest = clients.every(({ store }) => {
      const { pending, conflicts } = store.getSnapshot();
      return pending.length + conflicts.length === 0;
    });
    if (rest && chance.isQuiet) return;
  }
  throw new Error("the clients did not come to rest");
}

/** An act and the undo that takes it back, gone together, are no loss: nothing was to be left of them. */
const cameToNothing = ({ drawn }: Client, id: string, gone: readonly string[]): boolean =>
  gone.some((other) => drawn.get(other) === id || drawn.get(id) === other);

describe("three clients over a line that delays, drops and repeats, on pages that close and open", () => {
  it(`end on one digest, with nothing acknowledged lost and nothing drawn lost but by an answer (${runs} seeds)`, async () => {
    const reached = { conflicts: 0, acknowledged: 0, undone: 0 };
    for (let seed = 0; seed < runs; seed += 1) {
      const chance = new Chance(`seed ${seed}`);
      const office = new ModelOffice(emptyScheme);
      const clients = ["a", "b", "c"].map((name) => new Client(name, office, chance));
      for (let step = 0; step < steps; step += 1) {
        const client = chance.pick(clients);
        if (client !== undefined) anyStep(client, chance);
        if (chance.roll() < 0.7) await chance.happen();
      }
      await comeToRest(clients, chance);
      const digest = digestOf(office.scheme);
      for (const client of clients) {
        const told = `seed ${seed}, client ${client.name}`;
        expect(digestOf(client.store.getSnapshot().scheme), told).toBe(digest);
        expect(client.store.getSnapshot().contentDigest, told).toBe(digest);
        expect(client.kept, told).toEqual(nothingKept);
        const taken = new Set(office.taken.map(({ act }) => act.id));
        for (const id of client.acknowledged) expect(taken.has(id), `${told}: ${id} was acknowledged`).toBe(true);
        const gone = [...client.drawn.keys()].filter((id) => !taken.has(id) && !client.answeredAway.has(id));
        for (const id of gone) expect(cameToNothing(client, id, gone), `${told}: ${id} is lost`).toBe(true);
        reached.undone += gone.length;
        reached.conflicts += client.answeredAway.size;
        reached.acknowledged += client.acknowledged.size;
      }
      expect(new Set(office.taken.map(({ act }) => act.id)).size, `seed ${seed}: each act once`).toBe(
        office.taken.length,
      );
    }
    // The runs reach what they are for.
    expect(reached.conflicts).toBeGreaterThan(runs);
    expect(reached.undone).toBeGreaterThan(0);
    expect(reached.acknowledged).toBeGreaterThan(runs * 5);
  }, 120_000);
});
