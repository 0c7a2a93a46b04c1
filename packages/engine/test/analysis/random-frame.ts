import fc from "fast-check";
import type { FreedomName, Six, Triple } from "../../src/model/analytical-model.ts";
import { ALL, lineModel, type Parts } from "./line-model.ts";

const sections = {
  rail: { E: 200_000, G: 76_923, A: 1039.5, Iy: 3_477_144, Iz: 135_767, J: 7017 },
  post: { E: 200_000, G: 76_923, A: 3800, Iy: 7e6, Iz: 7e6, J: 7e6, Asy: 2000, Asz: 1500 },
};

/** Random boxes of bars and sheets on 4 to 12 columns, feet fixed, some ends hinged, loads anywhere. */
export const randomFrame = fc
  .record({
    bays: fc.integer({ min: 1, max: 4 }),
    storeys: fc.integer({ min: 1, max: 2 }),
    hinge: fc.array(fc.boolean(), { minLength: 80, maxLength: 80 }),
    sheet: fc.array(fc.boolean(), { minLength: 20, maxLength: 20 }),
    forces: fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 60, maxLength: 60 }),
    spread: fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 60, maxLength: 60 }),
  })
  .map((drawn): Parts => {
    const nodes: Parts["nodes"] = {};
    const beams: NonNullable<Parts["beams"]> = {};
    const panels: NonNullable<Parts["panels"]> = {};
    const supports: Parts["supports"] = {};
    const id = (x: number, y: number, z: number): string => `${x}.${y}.${z}`;
    let next = 0;
    const add = (i: string, j: string, section: string, up: Triple): void => {
      const hinges: FreedomName[] = drawn.hinge[next] ? ["ry", "rz"] : [];
      beams[`m${next++}`] = { i, j, section, up: [...up], ...(hinges.length > 0 && { rel_j: hinges }) };
    };
    for (let z = 0; z <= drawn.storeys; z++) {
      for (let x = 0; x <= drawn.bays; x++) {
        for (let y = 0; y <= 1; y++) {
          nodes[id(x, y, z)] = [x * 1500 + z * 40, y * 2259 + x * 30, z * 2700];
          if (z === 0) supports[id(x, y, z)] = [...ALL];
          else add(id(x, y, z - 1), id(x, y, z), "post", [0, 1, 0]);
          if (z > 0 && x > 0) add(id(x - 1, y, z), id(x, y, z), "rail", [0, 0, 1]);
        }
        if (z > 0) add(id(x, 0, z), id(x, 1, z), "rail", [0, 0, 1]);
      }
    }
    addSheets(drawn.bays, drawn.sheet, nodes, panels, id);
    const free = Object.keys(nodes).filter((node) => !supports[node]);
    const nodal = free.map((node, n) => ({ node, F: six(drawn.forces, n) }));
    const beam_udl = Object.keys(beams).map((beam, n) => ({
      beam,
      q: [
        (drawn.spread[n % 60] ?? 0) / 10,
        (drawn.spread[(n + 7) % 60] ?? 0) / 10,
        (drawn.spread[(n + 13) % 60] ?? 0) / 10,
      ] as const,
    }));
    return { nodes, sections, beams, panels, supports, load: { nodal, beam_udl } };
  });

function six(values: readonly number[], n: number): Six {
  const at = (k: number): number => (values[(n * 3 + k) % 60] ?? 0) * (k < 3 ? 100 : 1e5);
  return [at(0), at(1), at(2), at(3), at(4), at(5)];
}

/** Upright sheets stand plumb on their own corners, beside the leaning frame, joined to it by springs at the bars' ends. */
function addSheets(
  bays: number,
  chosen: readonly boolean[],
  nodes: Parts["nodes"],
  panels: NonNullable<Parts["panels"]>,
  id: (x: number, y: number, z: number) => string,
): void {
  for (let x = 0; x < bays; x++) {
    if (!chosen[x]) continue;
    const corners = [id(x, 0, 0), id(x + 1, 0, 0), id(x + 1, 0, 1), id(x, 0, 1)] as [string, string, string, string];
    const [bl, br] = [nodes[corners[0]], nodes[corners[1]]];
    if (!bl || !br) continue;
    const [tr, tl] = [nodes[corners[2]], nodes[corners[3]]];
    if (!tr || !tl) continue;
    tr[0] = br[0];
    tl[0] = bl[0];
    for (const corner of [bl, br, tr, tl]) corner[1] = bl[1];
    panels[`s${x}`] = { nodes: corners, Gt: 115_638, Ev: 340_585, Eh: 333 };
  }
}

export function randomModel(parts: Parts) {
  return lineModel(parts);
}
