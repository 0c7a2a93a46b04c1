import type { Remedy, RemedyFailed } from "@cornerway/schema";
import type { Drawn } from "./drawn-trial.ts";
import type { Proof } from "./proof.ts";
import { quantitiesOf } from "./quantities-of.ts";
import type { SearchGround } from "./search-ground.ts";

/** A proved change as an option: what it takes, and its price where it settles the mark. */
export function remedyOf(
  { trial, premium }: Drawn,
  proved: Extract<Proof, { ok: true }>,
  less: RemedyFailed | null,
  ground: SearchGround,
): Remedy {
  const { change, operations, also = [] } = trial;
  const { verdict, under, governing, why, stillOpen } = proved;
  const { total, currency, forShow } = premium;
  return {
    id: JSON.stringify([change, operations]),
    ...{ change, also, operations, verdict, under, governing, stillOpen, less },
    ...(why && { why }),
    quantities: quantitiesOf([change, ...also], operations, ground.scheme, ground.premium, premium),
    premium: verdict === "needs the engineer" ? null : { currency, money: total - ground.premium.total, forShow },
  };
}
