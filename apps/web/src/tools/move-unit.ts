import type { Container, Operation, Scheme } from "@cornerway/schema";
import { padsFollow } from "./pads-follow.ts";

/** Moves or turns a unit to where `after` is; its pads follow. Empty when nothing changes. */
export function moveUnit(scheme: Scheme, after: Container): Operation[] {
  const before = scheme.containers.find((unit) => unit.id === after.id);
  if (before === undefined) return [];
  const operations: Operation[] = [];
  const { id, xUm, yUm, zUm, turnMdeg } = after;
  if (before.xUm !== xUm || before.yUm !== yUm || before.zUm !== zUm)
    operations.push({ kind: "container.move", id, xUm, yUm, zUm });
  if (before.turnMdeg !== turnMdeg) operations.push({ kind: "container.turn", id, turnMdeg });
  return operations.length === 0 ? [] : [...operations, ...padsFollow(scheme, before, after)];
}

/** Another ISO size on the same centre; its pads follow. */
export function retypeUnit(scheme: Scheme, before: Container, type: Container["type"]): Operation[] {
  if (type === before.type) return [];
  return [{ kind: "container.retype", id: before.id, type }, ...padsFollow(scheme, before, { ...before, type })];
}
