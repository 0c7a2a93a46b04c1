import type { ModelNode } from "./analytical-model.ts";

/** Nodes of one container, named by their place in tenths of a millimetre. */
export class NodeBook {
  readonly nodes: ModelNode[] = [];
  private readonly known = new Map<number, string>();

  at(x: number, y: number, z: number): string {
    const a = Math.round(x * 10);
    const b = Math.round(y * 10);
    const c = Math.round(z * 10);
    const place = (a * ROOM + b) * ROOM + c;
    const found = this.known.get(place);
    if (found !== undefined) return found;
    const id = `${inTenths(a)},${inTenths(b)},${inTenths(c)}`;
    this.known.set(place, id);
    this.nodes.push({ id, x, y, z });
    return id;
  }
}

/** Ten metres to either side, in tenths of a millimetre: three such numbers are told apart in one whole number. */
const ROOM = 200_000;

function inTenths(tenths: number): string {
  return (tenths / 10 + 0).toFixed(1);
}
