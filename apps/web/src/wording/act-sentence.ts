import type { Operation, UnitSystem } from "@cornerway/schema";
import { spokenLength } from "../units/drawn-length.ts";
import { printQuantity, unitOf } from "../units/quantity.ts";
import { containerName } from "./container-name.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";

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
  const leading = operations.filter((operation) => !/^(pad|load|site|basis)\./.test(operation.kind));
  const told = leading.length > 0 ? leading : operations.slice(0, 1);
  const sentences = told.map((operation) => operationSentence(operation, words));
  return sentences.length > 3
    ? `${sentences.slice(0, 2).join(", ")} and ${sentences.length - 2} more`
    : listOf(sentences);
}

type Words = { nameOf: NameOf; units: UnitSystem; inverse: readonly Operation[] };

function operationSentence(operation: Operation, { nameOf, units, inverse }: Words): string {
  const long = (um: number) => spokenLength(um / 1000, units);
  const way = (to: PlaceUm) => wayWords(to, "id" in operation ? placeBefore(operation.id, inverse) : null, long);
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
      return "design basis changed";
    case "container.change":
      return `${operation.container.tag} changed`;
    case "opening.change":
      return `${operation.opening.tag} changed`;
    case "post.change":
      return `${operation.post.tag} changed`;
    case "pad.change":
      return `${operation.pad.tag} changed`;
    case "beam.set":
      return `${operation.beam.tag} set, ${operation.beam.section}`;
    case "beam.change":
      return `${operation.beam.tag} changed`;
    case "seat.set":
      return `${operation.seat.tag} set under ${nameOf(operation.seat.upperId)}`;
    case "seat.change":
      return `${operation.seat.tag} changed`;
    case "tie.set":
      return `${operation.tie.tag} set between ${nameOf(operation.tie.aId)} and ${nameOf(operation.tie.bId)}`;
    case "tie.change":
      return `${operation.tie.tag} changed`;
    case "lock.set":
      return `${operation.lock.tag} set, ${operation.lock.kind} under ${nameOf(operation.lock.containerId)}`;
    case "lock.change":
      return `${operation.lock.tag} made a ${operation.lock.kind}`;
    case "free-load.put":
      return `${operation.load.note} put on ${nameOf(operation.load.containerId)}`;
    case "free-load.change":
      return `${operation.load.note} changed`;
    case "use.set":
    case "use.change":
      return `${operation.use.surface} of ${nameOf(operation.use.containerId)} used as ${operation.use.occupancy}`;
    case "override.set":
    case "override.change":
      return `steel of ${nameOf(operation.override.elementId)} stated from ${operation.override.source}`;
    case "free-load.remove":
    case "use.remove":
    case "override.remove":
      return `${nameOf(operation.id)} taken off`;
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

/** "0.85 m east", "0.10 m north and 2.90 m up". */
function wayWords(to: PlaceUm, from: PlaceUm | null, long: (um: number) => string): string {
  if (from === null) return `to ${long(to.xUm)} east, ${long(to.yUm)} north`;
  const parts = [
    step(long, to.xUm - from.xUm, "east", "west"),
    step(long, to.yUm - from.yUm, "north", "south"),
    step(long, to.zUm - from.zUm, "up", "down"),
  ].filter((part) => part !== null);
  return parts.length === 0 ? "nowhere" : listOf(parts);
}

const step = (long: (um: number) => string, byUm: number, ahead: string, back: string): string | null =>
  byUm === 0 ? null : `${long(Math.abs(byUm))} ${byUm > 0 ? ahead : back}`;
