import type { Operation } from "@cornerway/schema";
import { containerName } from "./container-name.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";

/**
 * What one drawing act did, in the past tense: "F1 moved 0.85 m east". Pads and loads that only follow a unit are left
 * out. `inverse` tells where things were.
 */
export function actSentence(operations: readonly Operation[], inverse: readonly Operation[], nameOf: NameOf): string {
  const leading = operations.filter((operation) => !/^(pad|load|site|basis)\./.test(operation.kind));
  const told = leading.length > 0 ? leading : operations.slice(0, 1);
  const sentences = told.map((operation) => operationSentence(operation, inverse, nameOf));
  return sentences.length > 3
    ? `${sentences.slice(0, 2).join(", ")} and ${sentences.length - 2} more`
    : listOf(sentences);
}

function operationSentence(operation: Operation, inverse: readonly Operation[], nameOf: NameOf): string {
  switch (operation.kind) {
    case "container.place":
      return `${operation.container.tag} set, a ${containerName[operation.container.type]}`;
    case "container.move":
      return `${nameOf(operation.id)} moved ${way(operation, placeBefore(operation.id, inverse))}`;
    case "container.turn":
      return `${nameOf(operation.id)} turned to ${operation.turnMdeg / 1000}°`;
    case "container.retype":
      return `${nameOf(operation.id)} changed to a ${containerName[operation.type]}`;
    case "opening.cut":
      return `${operation.opening.tag} cut in ${nameOf(operation.opening.containerId)}, ${size(operation.opening)}`;
    case "opening.shape":
      return `${nameOf(operation.id)} set to ${size(operation)}, ${metres(operation.offsetUm)} along and ${metres(operation.sillUm)} up`;
    case "opening.dress":
      return `${nameOf(operation.id)} made a ${operation.use}`;
    case "post.set":
      return `${operation.post.tag} set, ${operation.post.section}, ${metres(operation.post.topZUm - operation.post.baseZUm)} high`;
    case "post.move":
      return `${nameOf(operation.id)} moved ${way({ ...operation, zUm: 0 }, placeBefore(operation.id, inverse))}`;
    case "post.length":
      return `${nameOf(operation.id)} made ${metres(operation.topZUm - operation.baseZUm)} high`;
    case "pad.set":
      return `${operation.pad.tag} set`;
    case "pad.move":
      return `${nameOf(operation.id)} moved ${way({ ...operation, zUm: operation.topZUm }, placeBefore(operation.id, inverse))}`;
    case "load.put":
      return `load on ${nameOf(operation.load.containerId)} set to ${operation.load.pressurePa / 1000} kPa`;
    case "load.change":
      return `load set to ${operation.pressurePa / 1000} kPa`;
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
function way(to: PlaceUm, from: PlaceUm | null): string {
  if (from === null) return `to ${metres(to.xUm)} east, ${metres(to.yUm)} north`;
  const parts = [
    step(to.xUm - from.xUm, "east", "west"),
    step(to.yUm - from.yUm, "north", "south"),
    step(to.zUm - from.zUm, "up", "down"),
  ].filter((part) => part !== null);
  return parts.length === 0 ? "nowhere" : listOf(parts);
}

const step = (byUm: number, ahead: string, back: string): string | null =>
  byUm === 0 ? null : `${metres(Math.abs(byUm))} ${byUm > 0 ? ahead : back}`;

const size = ({ widthUm, heightUm }: { widthUm: number; heightUm: number }) =>
  `${(widthUm / 1e6).toFixed(2)} × ${(heightUm / 1e6).toFixed(2)} m`;

const metres = (um: number) => `${(um / 1e6).toFixed(2).replace("-", "−")} m`;
