import { randomUUID } from "node:crypto";
import type { Container, DraftAct, NewNote, Operation, Post } from "@cornerway/schema";

/** A 20 ft unit on the ground; `n` sets its id, its label and its place, 10 m apart. */
export const unit = (n: number): Container => ({
  id: `g${n}`,
  tag: `G${n}`,
  type: "1CC",
  xUm: n * 10_000_000,
  yUm: 0,
  zUm: 0,
  turnMdeg: 0,
});

export const place = (n: number): Operation => ({ kind: "container.place", container: unit(n) });

export const move = (n: number, yUm: number): Operation => ({
  kind: "container.move",
  id: `g${n}`,
  xUm: n * 10_000_000,
  yUm,
  zUm: 0,
});

export const post = (n: number): Post => ({
  id: `p${n}`,
  tag: `P${n}`,
  xUm: n * 500_000,
  yUm: 4_000_000,
  baseZUm: 0,
  topZUm: 2_400_000,
  turnMdeg: 0,
  section: "HSS 4x4x1/4",
});

export const act = (base: number, operations: Operation[], more: Partial<DraftAct> = {}): DraftAct => ({
  id: randomUUID(),
  base,
  operations,
  ...more,
});

export const note = (elementId: string, more: Partial<NewNote> = {}): NewNote => ({
  id: randomUUID(),
  elementId,
  markId: null,
  revision: null,
  answers: null,
  text: "What holds this corner?",
  ...more,
});
