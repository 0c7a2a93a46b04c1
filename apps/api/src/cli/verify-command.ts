import { cautions } from "@cornerway/schema";
import { verifyBundle, type KnownOutside } from "../record/verify-bundle.ts";
import type { Answer } from "./answer.ts";

/** Checks a record's bundle without a database; `known` is what its reader has from elsewhere. */
export function verifyCommand(name: string, text: string, known: KnownOutside): Answer {
  const found = verifyBundle(text, known);
  if (!found.whole)
    return { out: "", err: found.faults.map((fault) => `${name}: ALTERED: ${fault}\n`).join(""), code: 1 };
  const { bundle, withheld, originProved } = found;
  const { head, keys } = bundle;
  const lines = [
    `${name}: the record of ${bundle.name} (${bundle.project})`,
    `entries 1 to ${head.number}, each in its place, ${withheld === 0 ? "all opened" : `${withheld} withheld`}`,
    `head ${head.head}, signed ${head.time}`,
    `key ${head.fingerprint}${keys.length > 1 ? `, last of a chain of ${keys.length} from ${keys[0]?.fingerprint}` : ""}`,
    originProved ? "whole, and from where it was expected" : "internally consistent, origin not proved",
    ...cautions,
  ];
  return { out: `${lines.join("\n")}\n`, err: "", code: 0 };
}
