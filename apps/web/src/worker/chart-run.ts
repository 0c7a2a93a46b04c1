import {
  engineVersion,
  type ChartColumn,
  type ChartRequest,
  type ChartSide,
  type OpeningChart,
} from "@cornerway/engine";
import { digestOf, type Scheme } from "@cornerway/schema";
import type { ChartPlace, ChartQuestion, ChartWord, Confirmed } from "./chart-messages.ts";

/** The part of a worker this needs. */
export interface ChartThread {
  post(question: ChartQuestion): void;
  listen(hear: (word: ChartWord) => void): void;
  end(): void;
}

/** A chart as far as it is drawn. */
export interface ChartSoFar {
  request: ChartRequest | null;
  side: ChartSide | null;
  columns: readonly ChartColumn[];
  /** The whole of it, once it is drawn. */
  chart: OpeningChart | null;
  done: number;
  /** 0 until it is known. */
  of: number;
  state: "drawing" | "drawn" | "stopped";
  broke: string | null;
  confirmed: Confirmed | null;
  /** Being solved under all runs. */
  confirming: ChartPlace | null;
}

const nothing: ChartSoFar = {
  ...{ request: null, side: null, columns: [], chart: null, done: 0, of: 0 },
  ...{ state: "drawing", broke: null, confirmed: null, confirming: null },
};

type Asked = { readonly scheme: Scheme; readonly request: ChartRequest; readonly key: string };

/**
 * One chart at a time. A chart that was drawn is kept by the digest of all that determines it; another question, or a stop, ends
 * the thread with what it does.
 */
export class ChartRun {
  readonly #start: () => ChartThread;
  readonly #tell: (so: ChartSoFar) => void;
  readonly #kept = new Map<string, OpeningChart>();
  #thread: ChartThread | null = null;
  #turn = 0;
  #asked: Asked | null = null;
  #so: ChartSoFar = nothing;

  constructor(start: () => ChartThread, tell: (so: ChartSoFar) => void) {
    this.#start = start;
    this.#tell = tell;
  }

  ask(scheme: Scheme, request: ChartRequest): void {
    const key = digestOf({ scheme, request, engineVersion });
    if (this.#asked?.key === key && this.#so.state !== "stopped") return;
    this.end();
    this.#asked = { scheme, request, key };
    const chart = this.#kept.get(key);
    if (chart !== undefined) return this.#say(drawn({ ...nothing, request }, chart));
    this.#say({ ...nothing, request });
    this.#post({ kind: "draw", turn: this.#turn, scheme, request });
  }

  /** Leaves the chart as far as it is. */
  stop(): void {
    this.end();
    if (this.#so.state === "drawing" || this.#so.confirming !== null)
      this.#say({ ...this.#so, state: this.#so.chart === null ? "stopped" : "drawn", confirming: null });
  }

  /** Solves one place and width under all runs. Asked while a chart is drawn, it comes between columns. */
  confirm(place: ChartPlace): void {
    if (this.#asked === null) return;
    const { scheme, request } = this.#asked;
    this.#say({ ...this.#so, confirming: place, confirmed: null });
    this.#post({ kind: "confirm", turn: this.#turn, scheme, request, place });
  }

  /** Ends what is under way. */
  end(): void {
    this.#thread?.end();
    this.#thread = null;
    this.#turn += 1;
  }

  #post(question: ChartQuestion): void {
    this.#thread ??= this.#open();
    this.#thread.post(question);
  }

  #open(): ChartThread {
    const thread = this.#start();
    thread.listen((word) => {
      if (thread === this.#thread && word.turn === this.#turn) this.#hear(word);
    });
    return thread;
  }

  #hear(word: ChartWord): void {
    const so = this.#so;
    if (word.kind === "side") return this.#say({ ...so, side: word.side, of: word.of });
    if (word.kind === "column") return this.#say(withColumn(so, word));
    if (word.kind === "confirmed") return this.#say({ ...so, confirmed: word.confirmed, confirming: null });
    if (word.kind === "broke") return this.#say({ ...so, state: "stopped", broke: word.why, confirming: null });
    this.#keep(word.chart);
    this.#say(drawn(so, word.chart));
  }

  #keep(chart: OpeningChart): void {
    if (this.#asked === null) return;
    this.#kept.set(this.#asked.key, chart);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > MOST_KEPT && oldest !== undefined) this.#kept.delete(oldest);
  }

  #say(so: ChartSoFar): void {
    this.#so = so;
    this.#tell(so);
  }
}

const MOST_KEPT = 12;

const drawn = (so: ChartSoFar, chart: OpeningChart): ChartSoFar => {
  const { side, columns } = chart;
  return { ...so, side, columns, chart, done: columns.length, of: columns.length, state: "drawn" };
};

/** One that comes again was traced anew. */
function withColumn(so: ChartSoFar, { column, done, of }: Extract<ChartWord, { kind: "column" }>): ChartSoFar {
  const others = so.columns.filter(({ centreMm }) => centreMm !== column.centreMm);
  const columns = [...others, column].toSorted((a, b) => a.centreMm - b.centreMm);
  return { ...so, columns, done, of };
}
