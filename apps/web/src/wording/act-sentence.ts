import { elementOf, type Beam, type Operation, type UnitSystem } from "@cornerway/schema";
import { loadFigure } from "../drawing/objects/load-figure.ts";
import { spokenLength } from "../units/drawn-length.ts";
import { printQuantity, unitOf } from "../units/quantity.ts";
import { changedWords } from "./changed-words.ts";
import { containerName } from "./container-name.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";
import { wayWords } from "./way-words.ts";

/**
 * What one drawing act did, in the past tense: "F1 moved 0.85 m east". Pads and loads that only follow a unit are left
 * out. `inverse` tells where things were.
 */
export function actSentence(
  operations: readonly Operation[],
  inverse: readonly Operation[],
  nameOf: NameOf,
  units: UnitSystem,
): string {
  const words: Words = { nameOf, units, inverse };
  const leading = operations.filter((operation) => !/^(pad|load|use|site|basis)\./.test(operation.kind));
  const told = leading.length > 0 ? leading : operations.slice(0, 1);
  const together = movedTogether(told, words);
  if (together !== null) return together;
  const sentences = told.map((operation) => operationSentence(operation, words));
  return sentences.length > 3
    ? `${sentences.slice(0, 2).join(", ")} and ${sentences.length - 2} more`
    : listOf(sentences);
}

/** Several units moved the same way, joints with them: told once. Null where that is not what was done. */
function movedTogether(told: readonly Operation[], { nameOf, units, inverse }: Words): string | null {
  const moves = told.filter((operation) => operation.kind === "container.move");
  const others = told.filter(({ kind }) => kind !== "container.move");
  if (moves.length < 2 || others.some(({ kind }) => kind !== "seat.change" && kind !== "tie.change")) return null;
  const long = (um: number) => spokenLength(um / 1000, units);
  const ways = new Set(moves.map((move) => wayTo(move, placeBefore(move.id, inverse), long)));
  const names = moves.length > 4 ? `${moves.length} containers` : listOf(moves.map(({ id }) => nameOf(id)));
  return ways.size === 1 ? `${names} moved ${[...ways].join("")}` : null;
}

type Words = { nameOf: NameOf; units: UnitSystem; inverse: readonly Operation[] };

function operationSentence(operation: Operation, { nameOf, units, inverse }: Words): string {
  const changed = (name: string, after: object) => {
    const words = changedWords(before(operation, inverse), after, units);
    return words === null ? `${name} changed` : `${name} changed: ${words}`;
  };
  const long = (um: number) => spokenLength(um / 1000, units);
  const way = (to: PlaceUm) => wayTo(to, "id" in operation ? placeBefore(operation.id, inverse) : null, long);
  const size = ({ widthUm, heightUm }: { widthUm: number; heightUm: number }) => `${long(widthUm)} × ${long(heightUm)}`;
  const pressure = (pa: number) => `${printQuantity("pressure", pa, units)} ${unitOf("pressure", units)}`;
  switch (operation.kind) {
    case "container.place":
      return `${operation.container.tag} set, a ${containerName[operation.container.type]}`;
    case "container.move":
      return `${nameOf(operation.id)} moved ${way(operation)}`;
    case "container.turn":
      return `${nameOf(operation.id)} turned to ${operation.turnMdeg / 1000}°`;
    case "container.retype":
      return `${nameOf(operation.id)} changed to a ${containerName[operation.type]}`;
    case "opening.cut":
      return `${operation.opening.tag} cut in ${nameOf(operation.opening.containerId)}, ${size(operation.opening)}`;
    case "opening.shape":
      return `${nameOf(operation.id)} set to ${size(operation)}, ${long(operation.offsetUm)} along and ${long(operation.sillUm)} up`;
    case "opening.dress":
      return `${nameOf(operation.id)} made a ${operation.use}`;
    case "post.set":
      return `${operation.post.tag} set, ${operation.post.section}, ${long(operation.post.topZUm - operation.post.baseZUm)} high`;
    case "post.move":
      return `${nameOf(operation.id)} moved ${way({ ...operation, zUm: 0 })}`;
    case "post.length":
      return `${nameOf(operation.id)} made ${long(operation.topZUm - operation.baseZUm)} high`;
    case "pad.set":
      return `${operation.pad.tag} set`;
    case "pad.move":
      return `${nameOf(operation.id)} moved ${way({ ...operation, zUm: operation.topZUm })}`;
    case "load.put":
      return `load on ${nameOf(operation.load.containerId)} set to ${pressure(operation.load.pressurePa)}`;
    case "load.change":
      return `load set to ${pressure(operation.pressurePa)}`;
    case "load.remove":
      return "load taken off";
    case "site.change":
      return "site changed";
    case "basis.change":
      return changed("design basis", operation.basis);
    case "container.change":
      return changed(operation.container.tag, operation.container);
    case "opening.change":
      return changed(operation.opening.tag, operation.opening);
    case "post.change":
      return changed(operation.post.tag, operation.post);
    case "pad.change":
      return changed(operation.pad.tag, operation.pad);
    case "beam.set":
      return `${operation.beam.tag} set, ${operation.beam.section}, ${long(beamLengthUm(operation.beam))} long`;
    case "beam.change":
      return changed(operation.beam.tag, operation.beam);
    case "seat.set":
      return `${operation.seat.tag} set under ${nameOf(operation.seat.upperId)} on ${nameOf(operation.seat.lowerId)}`;
    case "seat.change":
      return changed(operation.seat.tag, operation.seat);
    case "tie.set":
      return `${operation.tie.tag} set between ${nameOf(operation.tie.aId)} and ${nameOf(operation.tie.bId)}`;
    case "tie.change":
      return changed(operation.tie.tag, operation.tie);
    case "lock.set":
      return `${operation.lock.tag} set, ${operation.lock.kind} under ${nameOf(operation.lock.containerId)}`;
    case "lock.change":
      return changed(operation.lock.tag, operation.lock);
    case "free-load.put":
      return `${operation.load.note}, ${loadFigure(operation.load, units)}, put on the ${operation.load.surface} of ${nameOf(operation.load.containerId)}`;
    case "free-load.change":
      return changed(operation.load.tag, operation.load);
    case "use.set":
    case "use.change":
      return `${operation.use.surface} of ${nameOf(operation.use.containerId)} used as ${operation.use.occupancy}`;
    case "override.set":
    case "override.change":
      return `steel of ${nameOf(operation.override.elementId)} stated from ${operation.override.source}`;
    case "free-load.remove":
      return `${nameOf(operation.id)} taken off`;
    case "use.remove":
    case "override.remove":
      return takenBack(operation.id, inverse, nameOf);
    case "opening.close":
      return `${nameOf(operation.id)} closed`;
    case "container.remove":
    case "post.remove":
    case "pad.remove":
    case "beam.remove":
    case "seat.remove":
    case "tie.remove":
    case "lock.remove":
      return `${nameOf(operation.id)} taken away`;
  }
}

/** What has no label is told by what it was stated of. */
function takenBack(id: string, inverse: readonly Operation[], nameOf: NameOf): string {
  for (const other of inverse) {
    if (other.kind === "use.set" && other.use.id === id)
      return `use of the ${other.use.surface} of ${nameOf(other.use.containerId)} left open`;
    if (other.kind === "override.set" && other.override.id === id)
      return `steel of ${nameOf(other.override.elementId)} taken as assumed again`;
  }
  return "a statement taken off";
}

/** How the element of an operation was before it; null where its inverse is not known. */
function before(operation: Operation, inverse: readonly Operation[]): object | null {
  if (operation.kind === "basis.change") return inverse.find((other) => other.kind === "basis.change")?.basis ?? null;
  const id = elementOf(operation)?.id;
  const was = inverse.find((other) => other.kind === operation.kind && elementOf(other)?.id === id);
  return (was === undefined ? undefined : elementOf(was)) ?? null;
}

const beamLengthUm = ({ from, to }: Beam): number =>
  Math.hypot(to.xUm - from.xUm, to.yUm - from.yUm, to.zUm - from.zUm);

interface PlaceUm {
  xUm: number;
  yUm: number;
  zUm: number;
}

function placeBefore(id: string, inverse: readonly Operation[]): PlaceUm | null {
  for (const operation of inverse) {
    if (!("id" in operation) || operation.id !== id) continue;
    if (operation.kind === "container.move") return operation;
    if (operation.kind === "post.move") return { ...operation, zUm: 0 };
    if (operation.kind === "pad.move") return { ...operation, zUm: operation.topZUm };
  }
  return null;
}

const wayTo = (to: PlaceUm, from: PlaceUm | null, long: (um: number) => string): string =>
  from === null
    ? `to ${long(to.xUm)} east, ${long(to.yUm)} north`
    : wayWords({ xUm: to.xUm - from.xUm, yUm: to.yUm - from.yUm, zUm: to.zUm - from.zUm }, long);
