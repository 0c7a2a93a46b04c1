import type { ModelNode } from "./analytical-model.ts";

/** Nodes of one container, named by their place in tenths of a millimetre. */
export class NodeBook {
  readonly nodes: ModelNode[] = [];
  private readonly known = new Set<string>();

  at(x: number, y: number, z: number): string {
    const id = `${tenths(x)},${tenths(y)},${tenths(z)}`;
    if (!this.known.has(id)) {
      this.known.add(id);
      this.nodes.push({ id, x, y, z });
    }
    return id;
  }
}

function tenths(value: number): string {
  return (Math.round(value * 10) / 10 + 0).toFixed(1);
}
