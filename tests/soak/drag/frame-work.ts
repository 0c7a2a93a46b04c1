/** An event of the browser's trace, times in microseconds; `tdur` is the time its thread was at work. */
interface TraceEvent {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  ts: number;
  dur?: number;
  tdur?: number;
  args?: { data?: { type?: string } };
}

export interface FrameWork {
  /** Time the main thread was at work. */
  workMs: number;
  /** The same by the clock, which runs on while other programs have the processor. */
  wallMs: number;
}

/**
 * What the page's main thread did for each step of a drag: all its tasks from one move of the pointer to the next. Steps
 * are a frame apart, so each is the work of one frame, or of more where the page falls behind.
 */
export function frameWork(trace: string): FrameWork[] {
  const { traceEvents }: { traceEvents: TraceEvent[] } = JSON.parse(trace);
  const moves = traceEvents.filter(isMove).toSorted((a, b) => a.ts - b.ts);
  const [main] = moves;
  if (main === undefined) throw new Error("the trace holds no move of the pointer");
  const tasks = traceEvents.filter(
    ({ name, ph, pid, tid }) =>
      name === "ThreadControllerImpl::RunTask" && ph === "X" && pid === main.pid && tid === main.tid,
  );
  return moves.slice(1).map((next, at) => {
    const from = moves[at]?.ts ?? next.ts;
    // The task that hears a move begins a little before the move is given to the page.
    const done = tasks.filter(({ ts, dur = 0 }) => ts + dur > from && ts + dur <= next.ts);
    return { workMs: sum(done, ({ tdur }) => tdur) / 1000, wallMs: sum(done, ({ dur }) => dur) / 1000 };
  });
}

const isMove = ({ name, args }: TraceEvent): boolean => name === "EventDispatch" && args?.data?.type === "pointermove";

const sum = (events: readonly TraceEvent[], of: (event: TraceEvent) => number | undefined): number =>
  events.reduce((total, event) => total + (of(event) ?? 0), 0);
