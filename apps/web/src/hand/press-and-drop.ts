import type { Assessment, Operation } from "@cornerway/schema";
import type { PickedElement } from "../drawing/contract.ts";
import { project } from "../drawing/view-transform.ts";
import type { Point } from "./carried.ts";
import type { HandState } from "./hand-state.ts";
import type { Held } from "./held.ts";
import { isCarriedOn } from "./lift.ts";
import { withOperations } from "./with-operations.ts";

/** What may be asked of it before the acts are there. */
export interface PressingAndDropping {
  pressAt: (picked: PickedElement | null, point: Point, assessment: Assessment | null) => void;
  moveTo: (point: Point) => void;
  drop: () => void;
  setHeldUnit: () => void;
}

/** The pointer on the paper: pressed, moved with what it holds, let up. */
export function pressAndDrop(state: HandState<PressingAndDropping>, finish: (done: Operation[]) => void) {
  const { scheme, acts, mayDraw, tool, setTool, chosen } = state;
  const { held, hold, heldNow, carryOn } = state.holding;

  /** `assessment` tells where bearings are, for a post to stand under. */
  const pressAt = (picked: PickedElement | null, point: Point, assessment: Assessment | null) => {
    chosen.pressed(true);
    if (acts === null) return state.wait((hand) => hand.pressAt(picked, point, assessment));
    if (tool !== null && picked !== null) chosen.choose(picked.id);
    const { chosenIds } = chosen;
    const pressed = acts.press({ scheme, assessment, tool, held: heldNow(), picked, chosenIds, ...point });
    if (pressed.kind === "choose") chosen.choose(pressed.id);
    if (pressed.kind === "also") chosen.chooseAlso(pressed.id);
    if (pressed.kind === "cannot") state.cannot(pressed.why);
    if (pressed.kind === "draw") {
      finish(pressed.operations);
      setTool(null);
    }
    if (pressed.kind !== "hold") return;
    if (pressed.held.kind === "element") chosen.choose(pressed.held.id);
    if (mayDraw || pressed.held.kind === "band") hold(pressed.held);
  };

  const moveTo = (point: Point) => {
    if (state.isWaiting()) return state.wait((hand) => hand.moveTo(point));
    const last = heldNow();
    if (acts === null || last === null) return;
    const next = acts.carried(scheme, last, point);
    if (!state.lifts || !isCarriedOn(held, next)) return hold(next);
    const moved = acts.heldOperations(scheme, next);
    carryOn({ held: next, operations: moved, from: scheme, scheme: withOperations(scheme, moved) });
  };

  const drop = () => {
    chosen.pressed(false);
    if (state.isWaiting()) return state.wait((hand) => hand.drop());
    const dropped = heldNow();
    if (dropped === null || dropped.kind === "unit" || dropped.kind === "beam") return;
    if (dropped.kind === "cut") setTool(null);
    if (dropped.kind === "band") chooseWithin(dropped);
    if (dropped.kind === "group" && dropped.operations.length === 0) chosen.choose(dropped.id);
    finish(dropped.operations);
  };

  const chooseWithin = ({ projection, from, to, also }: Extract<Held, { kind: "band" }>) => {
    if (acts === null) return;
    const found = acts.withinBand(scheme, projection, project(projection, from), project(projection, to));
    chosen.chooseAll(also ? [...chosen.chosenIds, ...found] : found);
  };

  const setHeldUnit = () => {
    if (state.isWaiting()) return state.wait((hand) => hand.setHeldUnit());
    const now = heldNow();
    if (acts === null || now?.kind !== "unit") return;
    finish(acts.placeUnit(scheme, now.unit));
    setTool(null);
  };

  return { pressAt, moveTo, drop, setHeldUnit };
}
