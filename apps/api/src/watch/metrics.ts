import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from "prom-client";

const requestSeconds = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5];
const jobSeconds = [0.01, 0.05, 0.1, 0.5, 1, 2.5, 5, 10, 30, 60, 300];

/** Reads a number, or one for each of some labels, when someone asks. */
export type Reading = () => Promise<Labelled[]> | Labelled[];
export interface Labelled {
  labels: Record<string, string>;
  value: number;
}

/** The numbers of one process for those who watch it, in the text form of Prometheus. They name routes and tasks, never people or projects. */
export class Metrics {
  readonly #registry = new Registry();
  readonly #requests = new Histogram({
    name: "cornerway_request_seconds",
    help: "Time to answer a request, by method, pattern of the route and status",
    labelNames: ["method", "route", "status"],
    buckets: requestSeconds,
    registers: [this.#registry],
  });
  readonly #jobs = new Histogram({
    name: "cornerway_job_seconds",
    help: "Time a job of the queue took, by task and how it ended; an assessment is the task that assesses a revision",
    labelNames: ["task", "end"],
    buckets: jobSeconds,
    registers: [this.#registry],
  });
  readonly #failedReadings = new Counter({
    name: "cornerway_failed_readings",
    help: "Readings that could not be taken when they were asked for",
    labelNames: ["name"],
    registers: [this.#registry],
  });

  constructor() {
    collectDefaultMetrics({ register: this.#registry }); // event loop, memory, processor
  }

  request(labels: { method: string; route: string; status: number }, seconds: number): void {
    this.#requests.observe(labels, seconds);
  }

  job(task: string, seconds: number, failed: boolean): void {
    this.#jobs.observe({ task, end: failed ? "failed" : "done" }, seconds);
  }

  /** Adds a number that is read when it is asked for. */
  add(name: string, help: string, labelNames: readonly string[], read: Reading): void {
    const failed = this.#failedReadings;
    const gauge = new Gauge({
      ...{ name, help, labelNames: [...labelNames], registers: [this.#registry] },
      async collect() {
        this.reset();
        try {
          for (const { labels, value } of await read()) this.set(labels, value);
        } catch {
          failed.inc({ name }); // the rest is told all the same; that this is missing shows in the count
        }
      },
    });
    gauge.reset();
  }

  get contentType(): string {
    return this.#registry.contentType;
  }

  text(): Promise<string> {
    return this.#registry.metrics();
  }
}
