import type { Operation, Pad, RemedyChange } from "@cornerway/schema";
import { enlargedTo, sideFor } from "../changed-pads.ts";
import type { UsedPart } from "../known-parts.ts";
import type { Trial } from "../trial.ts";
import type { Lacking, Repair } from "./repair.ts";

/** Pads that the change loads beyond what soil or concrete bears, made larger; those it sets itself are set so. */
export const largerPadsToo: Repair = (trial, lacking) => {
  const changed = lacking.tried.pads.flatMap((pad): Pad[] => {
    const over = lacking.parts.filter(({ ownerId, element }) => element === "pad" && ownerId === pad.id);
    return over.length === 0 ? [] : [largerFor(pad, over, lacking)];
  });
  return changed.length === 0 ? undefined : changed.reduce(withPad, trial);
};

function largerFor(pad: Pad, over: readonly UsedPart[], { wouldDo }: Lacking): Pad {
  const named = wouldDo.get(pad.id);
  if (named !== undefined) return enlargedTo(pad, named);
  const use = Math.max(...over.map(({ use: one }) => one));
  return enlargedTo(pad, { sideMm: sideFor(pad.lengthUm / 1000, pad.widthUm / 1000, use * SPARE), depthMm: 0 });
}

/** A larger pad draws a little more load. Judged. */
const SPARE = 1.1;

function withPad(trial: Trial, pad: Pad): Trial {
  const { change, operations } = trial;
  const sideMm = Math.max(pad.lengthUm, pad.widthUm) / 1000;
  const isOwn = operations.some((operation) => operation.kind === "pad.set" && operation.pad.id === pad.id);
  if (isOwn) {
    const larger = operations.map((operation) =>
      operation.kind === "pad.set" && operation.pad.id === pad.id ? { ...operation, pad } : operation,
    );
    const told =
      change.kind === "posts" && change.padMm !== null ? { ...change, padMm: Math.max(change.padMm, sideMm) } : change;
    return { ...trial, change: told, operations: larger };
  }
  const others = operations.filter((operation) => operation.kind !== "pad.change" || operation.pad.id !== pad.id);
  const operation: Operation = { kind: "pad.change", pad };
  return { ...trial, operations: [...others, operation], also: withLargerPad(trial.also ?? [], pad.id, sideMm) };
}

/** One line for all pads of one size. */
function withLargerPad(also: readonly RemedyChange[], padId: string, sideMm: number): RemedyChange[] {
  const without = also.flatMap((change): RemedyChange[] => {
    if (change.kind !== "larger pads" || !change.padIds.includes(padId)) return [change];
    const padIds = change.padIds.filter((id) => id !== padId);
    return padIds.length === 0 ? [] : [{ ...change, padIds }];
  });
  const same = without.find((change) => change.kind === "larger pads" && change.sideMm === sideMm);
  if (same?.kind !== "larger pads") return [...without, { kind: "larger pads", padIds: [padId], sideMm }];
  return without.map((change) => (change === same ? { ...same, padIds: [...same.padIds, padId].toSorted() } : change));
}
