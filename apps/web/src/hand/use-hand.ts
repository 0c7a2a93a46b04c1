import { applyOperations } from "@cornerway/schema";
import type { Assessment, Container, Operation, PointMm, Scheme } from "@cornerway/schema";
import { useState } from "react";
import type { PickedElement, Side } from "../drawing/contract.ts";
import type { Projection } from "../drawing/view-transform.ts";
import type { ToolName } from "../sheet/contract.ts";
import { cutOpening } from "../tools/cut-opening.ts";
import { facePoint } from "../tools/face-point.ts";
import { placeUnit } from "../tools/place-unit.ts";
import { inSite } from "./eye-axes.ts";
import type { StepsMm } from "./eye-axes.ts";
import { firstUnit, unitAt } from "./first-unit.ts";
import type { Held } from "./held.ts";
import { moveElement } from "./move-element.ts";
import { press } from "./press.ts";
import { stepElement } from "./step-element.ts";

export interface Point {
  at: PointMm;
  projection: Projection;
  reachMm: number;
}

export interface HandOptions {
  /** The scheme on the paper, without what is held. */
  scheme: Scheme;
  /** Draws one act; false when the scheme would not take it. */
  draw: (operations: Operation[]) => boolean;
  cannot: (why: string) => void;
  mayDraw: boolean;
  side: Side;
}

/** The hand on the paper: which tool, what is chosen, what is held, and what the paper shows meanwhile. */
export function useHand({ scheme, draw, cannot, mayDraw, side }: HandOptions) {
  const [tool, setTool] = useState<ToolName | null>(null);
  const [chosenId, choose] = useState<string | null>(null);
  const [held, hold] = useState<Held | null>(null);

  const operations = heldOperations(scheme, held);
  const applied = operations.length === 0 ? null : applyOperations(scheme, operations);
  const shown = applied?.ok === true ? applied.scheme : scheme;

  const take = (next: ToolName | null) => {
    if (next !== null && !mayDraw) return cannot("Only the architect draws.");
    setTool(next);
    hold(next === "stack" ? { kind: "unit", unit: firstUnit(scheme, "1AAA") } : null);
  };

  const letGo = () => {
    if (held === null && tool === null) choose(null);
    setTool(null);
    hold(null);
  };

  const finish = (done: Operation[]) => {
    hold(null);
    if (done.length > 0 && draw(done)) choose(firstElement(done) ?? chosenId);
  };

  /** `assessment` tells where bearings are, for a post to stand under. */
  const pressAt = (picked: PickedElement | null, { at, projection, reachMm }: Point, assessment: Assessment | null) => {
    const pressed = press({ scheme, assessment, tool, held, picked, at, projection, reachMm });
    if (pressed.kind === "choose") choose(pressed.id);
    if (pressed.kind === "cannot") cannot(pressed.why);
    if (pressed.kind === "draw") {
      finish(pressed.operations);
      setTool(null);
    }
    if (pressed.kind !== "hold") return;
    if (pressed.held.kind === "element") choose(pressed.held.id);
    if (mayDraw) hold(pressed.held);
  };

  const moveTo = (point: Point) => {
    if (held !== null) hold(carried(scheme, held, point));
  };

  const drop = () => {
    if (held === null || held.kind === "unit") return;
    if (held.kind === "cut") setTool(null);
    finish(held.operations);
  };

  const setHeldUnit = () => {
    if (held?.kind !== "unit") return;
    finish(placeUnit(scheme, held.unit));
    setTool(null);
  };

  const step = (steps: StepsMm) => {
    if (held?.kind === "unit") return hold({ kind: "unit", unit: stepUnit(held.unit, side, steps) });
    if (chosenId === null) return;
    if (!mayDraw) return cannot("Only the architect draws.");
    const sofar = held?.kind === "steps" && held.id === chosenId ? held.steps : noSteps;
    const whole = { rightMm: sofar.rightMm + steps.rightMm, upMm: sofar.upMm + steps.upMm };
    hold({ kind: "steps", id: chosenId, steps: whole, operations: stepElement(scheme, chosenId, side, whole) });
  };

  return {
    tool,
    take,
    letGo,
    chosenId,
    choose,
    held,
    hold,
    shown,
    operations,
    pressAt,
    moveTo,
    drop,
    setHeldUnit,
    step,
    finish,
  };
}

export type Hand = ReturnType<typeof useHand>;

export function heldOperations(scheme: Scheme, held: Held | null): Operation[] {
  if (held === null) return [];
  return held.kind === "unit" ? placeUnit(scheme, held.unit) : held.operations;
}

function carried(scheme: Scheme, held: Held, { at, projection, reachMm }: Point): Held {
  switch (held.kind) {
    case "unit":
      return { kind: "unit", unit: unitAt(scheme, held.unit, projection, at, reachMm) };
    case "element":
      if (projection !== held.projection) return held;
      return { ...held, operations: moveElement(scheme, held.id, projection, held.from, at, reachMm) };
    case "cut": {
      const unit = scheme.containers.find(({ id }) => id === held.containerId);
      if (unit === undefined) return held;
      const to = facePoint(unit, held.face, at);
      const opening = cutOpening(scheme, unit, held.face, held.from, to, reachMm);
      return { ...held, to, operations: opening === null ? [] : [{ kind: "opening.cut", opening }] };
    }
    case "steps":
      return held;
  }
}

const noSteps: StepsMm = { rightMm: 0, upMm: 0 };

function stepUnit(unit: Container, side: Side, steps: StepsMm): Container {
  const { xMm, yMm } = inSite(side, steps);
  return { ...unit, xUm: unit.xUm + Math.round(xMm * 1000), yUm: unit.yUm + Math.round(yMm * 1000) };
}

function firstElement(operations: readonly Operation[]): string | null {
  for (const operation of operations) {
    if (operation.kind === "container.place") return operation.container.id;
    if (operation.kind === "opening.cut") return operation.opening.id;
    if (operation.kind === "post.set") return operation.post.id;
  }
  return null;
}
