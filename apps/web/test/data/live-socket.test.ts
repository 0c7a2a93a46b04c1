import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { LiveSocket } from "../../src/data/live-socket.ts";
import type { Assessing, Entries, Here } from "../../src/data/live-socket.ts";

/** A socket whose other end is the test. */
class Line extends EventTarget {
  static OPEN = 1;
  static opened: Line[] = [];
  readyState = 0;
  readonly said: unknown[] = [];
  constructor() {
    super();
    Line.opened.push(this);
  }
  send(text: string): void {
    this.said.push(JSON.parse(text));
  }
  close(code = 1006): void {
    this.readyState = 3;
    this.dispatchEvent(Object.assign(new Event("close"), { code }));
  }
  open(): void {
    this.readyState = 1;
    this.dispatchEvent(new Event("open"));
  }
  hear(message: unknown): void {
    this.dispatchEvent(new MessageEvent("message", { data: JSON.stringify(message) }));
  }
}

const line = (at: number): Line => {
  const found = Line.opened[at];
  if (found === undefined) throw new Error(`no line ${at} was opened`);
  return found;
};

function listener() {
  const heard = {
    ...{ entries: [] as Entries[], here: [] as Here[], runs: [] as Assessing[], up: [] as boolean[], stale: 0 },
  };
  return {
    heard,
    entries: (message: Entries) => void heard.entries.push(message),
    here: (people: Here) => void heard.here.push(people),
    assessing: (run: Assessing) => void heard.runs.push(run),
    line: (up: boolean) => void heard.up.push(up),
    stale: () => void (heard.stale += 1),
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  Line.opened = [];
  vi.stubGlobal("WebSocket", Line);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("LiveSocket", () => {
  it("tells how far the check of a revision is", () => {
    const told = listener();
    const socket = new LiveSocket("ws://office/live", 0, told);
    line(0).open();
    const run = {
      ...{ letter: "B", attempt: 1, state: "waiting", askedAt: "2026-11-27T09:00:00.000Z", startedAt: null },
      ...{ steps: { done: 0, of: 3 }, leftMs: null, why: null, engineVersion: null },
    };
    line(0).hear({ type: "assessing", run });
    expect(told.heard.runs).toEqual([run]);
    socket.end();
  });

  it("resumes after the number it was given, and after the last one heard when the line comes back", () => {
    const told = listener();
    const socket = new LiveSocket("ws://office/live", 7, told);
    line(0).open();
    expect(line(0).said).toEqual([{ type: "resume", after: 7 }]);
    line(0).hear({ type: "entries", entries: [], upTo: 12 });
    line(0).close();
    expect(told.heard.up).toEqual([true, false]);
    vi.advanceTimersByTime(1000);
    line(1).open();
    expect(line(1).said).toEqual([{ type: "resume", after: 12 }]);
    socket.end();
  });

  it("comes back ever less eagerly while nothing is heard, and not at all once ended", () => {
    const socket = new LiveSocket("ws://office/live", 0, listener());
    line(0).close();
    vi.advanceTimersByTime(499);
    expect(Line.opened).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(Line.opened).toHaveLength(2);
    line(1).close();
    vi.advanceTimersByTime(999);
    expect(Line.opened).toHaveLength(2);
    vi.advanceTimersByTime(1);
    expect(Line.opened).toHaveLength(3);
    socket.end();
    vi.advanceTimersByTime(60_000);
    expect(Line.opened).toHaveLength(3);
  });

  it("says again what is held on a line that came back, and pings while it is silent", () => {
    const presence = { sheet: 1, selected: "g1", dragging: null };
    const socket = new LiveSocket("ws://office/live", 0, listener());
    socket.tell(presence);
    line(0).open();
    expect(line(0).said).toEqual([
      { type: "resume", after: 0 },
      { type: "presence", presence },
    ]);
    vi.advanceTimersByTime(6000);
    expect(line(0).said.slice(2)).toEqual([{ type: "presence", presence }, { type: "ping" }]);
    socket.end();
  });

  // The codes of apps/api/src/realtime/README.md.
  it.each([
    [1001, 0],
    [1006, 0],
    [1013, 0],
    [4401, 1],
    [4409, 1],
  ])("closed with %i says %i times that what the page holds is stale", (code, times) => {
    const told = listener();
    const socket = new LiveSocket("ws://office/live", 7, told);
    line(0).open();
    line(0).close(code);
    expect(told.heard.stale).toBe(times);
    socket.end();
  });

  it("takes a line that has been silent for more than 20 s for dead", () => {
    const told = listener();
    const socket = new LiveSocket("ws://office/live", 0, told);
    line(0).open();
    vi.advanceTimersByTime(24_000);
    expect(told.heard.up).toEqual([false]);
    socket.end();
  });
});
