import type { Container } from "@cornerway/schema";
import type { StepsMm } from "./eye-axes.ts";
import { onlyArchitect, type HandState } from "./hand-state.ts";
import { stepUnit } from "./step-unit.ts";
import type { takeAndFinish } from "./take-and-finish.ts";
import type { TurnedOrSized } from "./turn-or-size.ts";

/** What may be asked of it before the acts are there. */
export interface TurningAndStepping {
  step: (steps: StepsMm) => void;
  turn: () => void;
  resize: (by: 1 | -1) => void;
}

/** What keys and commands do to what is held or chosen: turn it, size it, step it on; a new unit is taken in hand. */
export function turnAndStep(
  state: HandState<TurningAndStepping>,
  { take, finish }: Pick<ReturnType<typeof takeAndFinish>, "take" | "finish">,
) {
  const { scheme, acts, side } = state;
  const { chosenId, chosenIds } = state.chosen;
  const { held, hold, heldNow } = state.holding;

  const turn = () => {
    if (acts === null) return state.wait((hand) => hand.turn());
    const next = acts.turned(scheme, heldNow(), chosenId);
    if (next === null) take("turn");
    else takeOrDraw(next);
  };

  const resize = (by: 1 | -1) => {
    if (acts === null) return state.wait((hand) => hand.resize(by));
    takeOrDraw(acts.resized(scheme, heldNow(), chosenId, by));
  };

  const takeOrDraw = (next: TurnedOrSized) => {
    if (next?.kind === "hold") hold(next.held);
    if (next?.kind === "draw") finish(next.operations);
  };

  /** A new unit in hand, with the next free label of where it is. */
  const holdUnit = (unit: Container) => {
    if (acts !== null) hold({ kind: "unit", unit: acts.labelled(scheme, unit) });
  };

  const step = (steps: StepsMm) => {
    if (acts === null) return state.wait((hand) => hand.step(steps));
    const now = heldNow();
    if (now?.kind === "unit") return hold({ kind: "unit", unit: stepUnit(now.unit, side, steps) });
    if (chosenIds.length === 0) return;
    if (!state.mayDraw) return state.cannot(onlyArchitect);
    const sofar = held?.kind === "steps" ? held.steps : noSteps;
    const whole = { rightMm: sofar.rightMm + steps.rightMm, upMm: sofar.upMm + steps.upMm };
    const operations = acts.stepElements(scheme, chosenIds, side, whole);
    hold({ kind: "steps", ids: chosenIds, steps: whole, operations });
  };

  return { turn, resize, holdUnit, step };
}

const noSteps: StepsMm = { rightMm: 0, upMm: 0 };
