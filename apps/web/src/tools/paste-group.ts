import { elementById, elementsOf, referencesOf, type Operation, type Scheme } from "@cornerway/schema";
import type { CarriedGroup } from "./carried-group.ts";
import { groupBox, type GroupBox, wholeGroup } from "./chosen-group.ts";
import { copyInto } from "./copy-group.ts";
import { shiftedBy, type Laying } from "./laying.ts";

/** Between what stands there and what is laid beside it, µm. */
const asideUm = 1_000_000;

/**
 * Lays carried things on a scheme in one act: in their own place where nothing stands there, else east of all that is drawn.
 * What is cut into or set on one unit, and carried without it, goes on the unit `ontoId`.
 */
export function pasteGroup(
  { chosen, scheme: from }: CarriedGroup,
  into: Scheme,
  ontoId: string | null,
): Operation[] | { cannot: string } {
  const hosts = hostsLeft(from, chosen);
  if (hosts.length === 0) return copyInto(from, into, chosen, [freeLaying(from, chosen, into)]);
  const onto = into.containers.find(({ id }) => id === ontoId);
  const [host, ...others] = hosts;
  if (host === undefined || others.length > 0)
    return { cannot: "What joins units is copied with them: choose the units as well, then copy." };
  if (onto === undefined) return { cannot: "Choose the unit that this goes on, then lay it there." };
  return copyInto(from, into, chosen, [shiftedBy(0, 0)], new Map([[host, onto.id]]));
}

/** What the things hang on that is not carried as chosen. */
function hostsLeft(from: Scheme, chosen: readonly string[]): string[] {
  const group = wholeGroup(from, chosen);
  const hosts = [...group].flatMap((id) => {
    const element = elementById(from, id);
    return element === undefined ? [] : referencesOf(element).map((reference) => reference.id);
  });
  return [...new Set(hosts)].filter((id) => !group.has(id));
}

function freeLaying(from: Scheme, chosen: readonly string[], into: Scheme): Laying {
  const own = groupBox(from, chosen);
  const there = groupBox(
    into,
    elementsOf(into).map(({ id }) => id),
  );
  if (own === null || there === null || !overlap(own, there)) return shiftedBy(0, 0);
  return shiftedBy(there.eastUm + asideUm - own.westUm, 0);
}

const overlap = (a: GroupBox, b: GroupBox): boolean =>
  a.westUm < b.eastUm && b.westUm < a.eastUm && a.southUm < b.northUm && b.southUm < a.northUm;
