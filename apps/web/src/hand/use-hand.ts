import type { Assessment, Container, Operation, Scheme } from "@cornerway/schema";
import { useLayoutEffect, useMemo, useState } from "react";
import { laterPart } from "../controls/later-part.ts";
import type { PickedElement, Side } from "../drawing/contract.ts";
import type { ToolName } from "../sheet/contract.ts";
import { tooMany } from "../tools/act-size.ts";
import type { Point } from "./carried.ts";
import type { StepsMm } from "./eye-axes.ts";
import type { TurnedOrSized } from "./turn-or-size.ts";
import type { Held } from "./held.ts";
import { isCarriedOn } from "./lift.ts";
import { madeElements } from "./made-elements.ts";
import { stepUnit } from "./step-unit.ts";
import { useChosen } from "./use-chosen.ts";
import { useHeld } from "./use-held.ts";
import { useWaiting } from "./use-waiting.ts";
import { withOperations } from "./with-operations.ts";
import { project } from "../drawing/view-transform.ts";

export type { Point } from "./carried.ts";

export interface HandOptions {
  /** The scheme on the paper, without what is held. */
  scheme: Scheme;
  /** Draws one act; false when the scheme would not take it. */
  draw: (operations: Operation[]) => boolean;
  cannot: (why: string) => void;
  mayDraw: boolean;
  side: Side;
  /** What stands on these and would stay; nothing where nobody knows. */
  standing?: (ids: readonly string[]) => readonly string[];
  /** True where the paper draws what is held as part of the scheme on its views: it is lifted off while the hand moves. */
  lifts?: boolean;
}

/** What may be asked of the hand before its acts are there. */
interface Waiting {
  take: (next: ToolName | null) => void;
  remove: (ids: readonly string[]) => void;
  pressAt: (picked: PickedElement | null, point: Point, assessment: Assessment | null) => void;
  moveTo: (point: Point) => void;
  drop: () => void;
  setHeldUnit: () => void;
  step: (steps: StepsMm) => void;
  turn: () => void;
  resize: (by: 1 | -1) => void;
}

const useActs = laterPart(() => import("./acts.ts"));

/** The hand on the paper: which tool, what is chosen, what is held, and what the paper shows meanwhile. */
export function useHand({ scheme, draw, cannot, mayDraw, side, standing = noneStanding, lifts = false }: HandOptions) {
  const [tool, setTool] = useState<ToolName | null>(null);
  const { held, lift, lifted, hold, heldNow, carryOn } = useHeld();
  /** What would go, while it is asked about what hangs or stands on it. */
  const [going, setGoing] = useState<readonly string[] | null>(null);
  const chosen = useChosen(scheme);
  const { chosenId, chosenIds, choose } = chosen;
  const acts = useActs();
  const { doBy, wait, isWaiting } = useWaiting<Waiting>(acts !== null);

  // the same objects until the hand moves: the engine is asked anew of every other scheme
  const operations = useMemo(() => acts?.heldOperations(scheme, held) ?? noOperations, [acts, scheme, held]);
  const shown = useMemo(() => withOperations(scheme, operations), [scheme, operations]);

  /** What takes away what is asked about. */
  const removal = useMemo(
    () => (going === null || acts === null ? noOperations : acts.removeElements(scheme, going)),
    [acts, scheme, going],
  );

  const take = (next: ToolName | null) => {
    if (next !== null && !mayDraw) return cannot("Only the architect draws.");
    if (acts === null) return wait((hand) => hand.take(next));
    setTool(next);
    hold(next === "stack" ? { kind: "unit", unit: acts.firstUnit(scheme, "1AAA") } : null);
  };

  const letGo = () => {
    if (going !== null) return setGoing(null);
    if (held === null && tool === null) choose(null);
    setTool(null);
    hold(null);
  };

  const finish = (done: Operation[]) => {
    hold(null);
    setGoing(null);
    const why = tooMany(done);
    if (why !== null) return cannot(why);
    if (done.length === 0 || !draw(done)) return;
    const made = madeElements(done);
    if (made.length > 0) chosen.chooseAll(made);
  };

  /** Takes things away; what hangs or stands on them is asked about first. */
  const remove = (ids: readonly string[] = chosenIds) => {
    if (ids.length === 0) return;
    if (!mayDraw) return cannot("Only the architect draws.");
    if (acts === null) return wait((hand) => hand.remove(ids));
    const asks = acts.askedAbout(scheme, ids).length + standing(ids).length > 0;
    if (going === null && asks) return setGoing(ids);
    finish(acts.removeElements(scheme, ids));
  };

  /** `assessment` tells where bearings are, for a post to stand under. */
  const pressAt = (picked: PickedElement | null, point: Point, assessment: Assessment | null) => {
    chosen.pressed(true);
    if (acts === null) return wait((hand) => hand.pressAt(picked, point, assessment));
    if (tool !== null && picked !== null) choose(picked.id);
    const pressed = acts.press({ scheme, assessment, tool, held: heldNow(), picked, chosenIds, ...point });
    if (pressed.kind === "choose") choose(pressed.id);
    if (pressed.kind === "also") chosen.chooseAlso(pressed.id);
    if (pressed.kind === "cannot") cannot(pressed.why);
    if (pressed.kind === "draw") {
      finish(pressed.operations);
      setTool(null);
    }
    if (pressed.kind !== "hold") return;
    if (pressed.held.kind === "element") choose(pressed.held.id);
    if (mayDraw || pressed.held.kind === "band") hold(pressed.held);
  };

  const moveTo = (point: Point) => {
    if (isWaiting()) return wait((hand) => hand.moveTo(point));
    const last = heldNow();
    if (acts === null || last === null) return;
    const next = acts.carried(scheme, last, point);
    if (!lifts || !isCarriedOn(held, next)) return hold(next);
    const moved = acts.heldOperations(scheme, next);
    carryOn({ held: next, operations: moved, from: scheme, scheme: withOperations(scheme, moved) });
  };

  const drop = () => {
    chosen.pressed(false);
    if (isWaiting()) return wait((hand) => hand.drop());
    const dropped = heldNow();
    if (dropped === null || dropped.kind === "unit" || dropped.kind === "beam") return;
    if (dropped.kind === "cut") setTool(null);
    if (dropped.kind === "band") chooseWithin(dropped);
    if (dropped.kind === "group" && dropped.operations.length === 0) choose(dropped.id);
    finish(dropped.operations);
  };

  const chooseWithin = ({ projection, from, to, also }: Extract<Held, { kind: "band" }>) => {
    if (acts === null) return;
    const found = acts.withinBand(scheme, projection, project(projection, from), project(projection, to));
    chosen.chooseAll(also ? [...chosenIds, ...found] : found);
  };

  const setHeldUnit = () => {
    if (isWaiting()) return wait((hand) => hand.setHeldUnit());
    const now = heldNow();
    if (acts === null || now?.kind !== "unit") return;
    finish(acts.placeUnit(scheme, now.unit));
    setTool(null);
  };

  const turn = () => {
    if (acts === null) return wait((hand) => hand.turn());
    const next = acts.turned(scheme, heldNow(), chosenId);
    if (next === null) take("turn");
    else takeOrDraw(next);
  };

  const resize = (by: 1 | -1) => {
    if (acts === null) return wait((hand) => hand.resize(by));
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
    if (acts === null) return wait((hand) => hand.step(steps));
    const now = heldNow();
    if (now?.kind === "unit") return hold({ kind: "unit", unit: stepUnit(now.unit, side, steps) });
    if (chosenIds.length === 0) return;
    if (!mayDraw) return cannot("Only the architect draws.");
    const sofar = held?.kind === "steps" ? held.steps : noSteps;
    const whole = { rightMm: sofar.rightMm + steps.rightMm, upMm: sofar.upMm + steps.upMm };
    hold({
      kind: "steps",
      ids: chosenIds,
      steps: whole,
      operations: acts.stepElements(scheme, chosenIds, side, whole),
    });
  };

  const hand = {
    tool,
    take,
    letGo,
    chosenId,
    chosenIds,
    choose,
    chooseAlso: chosen.chooseAlso,
    chooseAll: chosen.chooseAll,
    focused: chosen.focused,
    held,
    hold,
    lift,
    /** True once what is held has left its place on the paper. */
    lifted,
    going,
    setGoing,
    removal,
    remove,
    shown,
    operations,
    pressAt,
    moveTo,
    drop,
    setHeldUnit,
    step,
    turn,
    resize,
    holdUnit,
    finish,
  };
  useLayoutEffect(() => {
    doBy(hand);
  });
  return hand;
}

export type Hand = ReturnType<typeof useHand>;

const noneStanding = () => [];

const noOperations: Operation[] = [];

const noSteps: StepsMm = { rightMm: 0, upMm: 0 };
