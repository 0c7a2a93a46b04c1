import { setTimeout as pause } from "node:timers/promises";
import type { Runner } from "graphile-worker";
import type { RollCall } from "./roll-call.ts";
import { runTasks, type TaskPlace, type TaskPlan } from "./run-tasks.ts";

const beforeAnewMs = 1_000;

export interface KeptPlace extends Omit<TaskPlace, "onName"> {
  rollCall: RollCall;
}

/** Runs tasks, and runs them anew whenever the queue was lost. Rejects when the first run does not begin; returns what stops it. */
export async function keepRunning(plan: TaskPlan, place: KeptPlace): Promise<() => Promise<void>> {
  const { log } = place.context;
  let stopped = false;
  let name: string | undefined;
  let runner: Runner | undefined;
  const begin = async () => {
    if (name !== undefined) place.rollCall.remove(name); // so that what it held is given back
    const onName = (given: string) => {
      name = given;
      place.rollCall.add(given);
    };
    runner = await runTasks(plan, { ...place, onName });
    return runner;
  };
  const keep = async (begun: Runner) => {
    for (let running: Runner | undefined = begun; !stopped;) {
      try {
        await running?.promise;
      } catch (error) {
        log.error({ err: error }, "the queue was lost; taking it up anew");
      }
      if (stopped) return;
      await pause(beforeAnewMs);
      running = await begin().catch((error: unknown) => {
        log.warn({ err: error }, "the queue cannot be taken up yet");
        return undefined;
      });
    }
  };
  const kept = keep(await begin());
  return async () => {
    stopped = true;
    await runner?.stop().catch((error: unknown) => log.warn({ err: error }, "the queue was not left in order"));
    await kept;
  };
}
