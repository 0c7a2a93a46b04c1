import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { FrameRefusal } from "./frame-result.ts";

/** Says which nodes a movement carries with it and which way they go on average; of one movement once. */
export function refusal(reason: string, movement: Float64Array | null, nodeIds: readonly string[]): FrameRefusal {
  if (movement === null) return { refused: reason, moves: { nodes: [], direction: [0, 0, 0, 0, 0, 0] } };
  const known = said.get(movement);
  if (known?.reason === reason && known.nodeIds === nodeIds) return known.words;
  const words = inFull(reason, movement, nodeIds);
  said.set(movement, { reason, nodeIds, words });
  return words;
}

const said = new WeakMap<
  Float64Array,
  { readonly reason: string; readonly nodeIds: readonly string[]; readonly words: FrameRefusal }
>();

function inFull(reason: string, movement: Float64Array, nodeIds: readonly string[]): FrameRefusal {
  const moving = movingNodes(movement, nodeIds.length);
  const direction = scaled(average(movement, moving));
  const nodes = moving.map((node) => nodeIds[node] ?? "");
  return {
    refused: `${reason}: ${named(nodes)} ${nodes.length === 1 ? "is" : "are"} free to move ${inWords(direction)}`,
    moves: { nodes, direction },
  };
}

/** A node is said to move when it moves by more than this part of the largest movement (for naming only). */
const NAMED_PART = 0.01;

function movingNodes(movement: Float64Array, nodeCount: number): number[] {
  const part = (f: number): number => Math.abs(movement[f] ?? 0);
  const size = (node: number, from: number): number =>
    Math.max(part(node * 6 + from), part(node * 6 + from + 1), part(node * 6 + from + 2));
  const all = Array.from({ length: nodeCount }, (_, node) => node);
  const from = all.some((node) => size(node, 0) > 0) ? 0 : 3;
  const most = all.reduce((largest, node) => Math.max(largest, size(node, from)), 0);
  return all.filter((node) => size(node, from) > NAMED_PART * most);
}

function average(movement: Float64Array, nodes: readonly number[]): number[] {
  return [0, 1, 2, 3, 4, 5].map(
    (c) => nodes.reduce((sum, node) => sum + (movement[node * 6 + c] ?? 0), 0) / nodes.length,
  );
}

/** Scaled to a largest component of 1; components lost in the rounding of the others become 0. */
function scaled(direction: readonly number[]): number[] {
  const most = Math.max(...direction.map(Math.abs));
  return direction.map((value) => (most === 0 || Math.abs(value) < most * SOLUTION_ACCURACY ? 0 : value / most));
}

function named(nodes: readonly string[]): string {
  const shown = nodes.slice(0, 3).join(", ");
  return nodes.length === 1
    ? `node ${shown}`
    : nodes.length <= 3
      ? `nodes ${shown}`
      : `nodes ${shown} and ${nodes.length - 3} more`;
}

const WAYS = [
  ["west", "east"],
  ["south", "north"],
  ["down", "up"],
  ["about the x axis (backwards)", "about the x axis"],
  ["about the y axis (backwards)", "about the y axis"],
  ["about the z axis (backwards)", "about the z axis"],
] as const;

function inWords(direction: readonly number[]): string {
  const largest = direction.reduce(
    (best, value, c) => (Math.abs(value) > Math.abs(direction[best] ?? 0) ? c : best),
    0,
  );
  return WAYS[largest]?.[(direction[largest] ?? 0) > 0 ? 1 : 0] ?? "";
}
