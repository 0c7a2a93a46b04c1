import type { Operation } from "@cornerway/schema";
import type { ToolName } from "../sheet/contract.ts";
import { tooMany } from "../tools/act-size.ts";
import { onlyArchitect, type HandState } from "./hand-state.ts";
import { madeElements } from "./made-elements.ts";

/** What may be asked of it before the acts are there. */
export interface TakingAndFinishing {
  take: (next: ToolName | null) => void;
  remove: (ids?: readonly string[]) => void;
}

/** Taking up a tool and letting go of it, drawing what was done with it, and taking things away. */
export function takeAndFinish(state: HandState<TakingAndFinishing>) {
  const { scheme, acts, mayDraw, cannot, chosen, going } = state;
  const { held, hold } = state.holding;

  const take = (next: ToolName | null) => {
    if (next !== null && !mayDraw) return cannot(onlyArchitect);
    if (acts === null) return state.wait((hand) => hand.take(next));
    state.setTool(next);
    hold(next === "stack" ? { kind: "unit", unit: acts.firstUnit(scheme, "1AAA") } : null);
  };

  const letGo = () => {
    if (going !== null) return state.setGoing(null);
    if (held === null && state.tool === null) chosen.choose(null);
    state.setTool(null);
    hold(null);
  };

  const finish = (done: Operation[]) => {
    hold(null);
    state.setGoing(null);
    const why = tooMany(done);
    if (why !== null) return cannot(why);
    if (done.length === 0 || !state.draw(done)) return;
    const made = madeElements(done);
    if (made.length > 0) chosen.chooseAll(made);
  };

  /** Takes things away; what hangs or stands on them is asked about first. */
  const remove = (ids: readonly string[] = chosen.chosenIds) => {
    if (ids.length === 0) return;
    if (!mayDraw) return cannot(onlyArchitect);
    if (acts === null) return state.wait((hand) => hand.remove(ids));
    const asks = acts.askedAbout(scheme, ids).length + state.standing(ids).length > 0;
    if (going === null && asks) return state.setGoing(ids);
    finish(acts.removeElements(scheme, ids));
  };

  return { take, letGo, finish, remove };
}
