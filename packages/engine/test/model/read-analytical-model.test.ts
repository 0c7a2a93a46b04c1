import { describe, expect, it } from "vitest";
import { readAnalyticalModel } from "../../src/model/read-analytical-model.ts";
import { referenceJson } from "../analysis/reference-model.ts";

const section = { E: 200_000, G: 76_923, A: 1000, Iy: 1e6, Iz: 1e6, J: 1e6 };

/** A model file that may be spoilt anywhere. */
type Spoilt = ReturnType<typeof JSON.parse>;

function sound(): Spoilt {
  return {
    nodes: [
      { id: "a", x: 0, y: 0, z: 0 },
      { id: "b", x: 3000, y: 0, z: 0 },
      { id: "c", x: 3000, y: 0, z: 2400 },
      { id: "d", x: 0, y: 0, z: 2400 },
    ],
    sections: { "rail 60": { ...section } },
    beams: [
      {
        id: "ab",
        i: "a",
        j: "b",
        section: "rail 60",
        up: [0, 0, 1],
        rel_i: ["ry"],
        off_i: [0, 0, 10],
        off_j: [0, 0, 10],
      },
    ],
    panels: [{ id: "sheet", nodes: ["a", "b", "c", "d"], Gt: 115_638, Ev: 340_585, Eh: 0 }],
    springs: [{ id: "soil", i: "b", k: [0, 0, 1e5, 0, 0, 0] }],
    links: [{ id: "seat", i: "a", j: "d", k: [1, 1, 1, 0, 0, 0], compression_only: true }],
    supports: [{ node: "a", fix: ["ux", "uy", "uz"], compression_only: true }],
    cases: {
      D: {
        nodal: [{ node: "c", F: [0, 0, -1, 0, 0, 0] }],
        beam_udl: [{ beam: "ab", q: [0, 0, -1] }],
        settle: [{ node: "a", dof: "uz", value: -1 }],
      },
    },
    combos: { SLS: { D: 1 } },
  };
}

/** The path at which a copy of the sound model, changed in one place, is refused. */
function pathOf(change: (model: Spoilt) => void): string {
  const model = sound();
  change(model);
  const reading = readAnalyticalModel(model);
  return reading.ok ? "accepted" : reading.path;
}

describe("a sound file", () => {
  it("is read as it stands", () => expect(readAnalyticalModel(sound())).toEqual({ ok: true, model: sound() }));

  it.each(["D01", "D02", "D03", "D04", "D05", "D06", "D07"])("reference model %s is read", (name) => {
    expect(readAnalyticalModel(referenceJson(`models/${name}.model.json`)).ok).toBe(true);
  });

  it("lists that are not needed may be left out", () => {
    expect(
      pathOf((m) => ["sections", "beams", "panels", "springs", "links", "supports"].forEach((key) => delete m[key])),
    ).toBe("$.cases.D.beam_udl[0].beam");
  });
});

describe("an unsound file is refused at the path of its first fault", () => {
  const faults: [string, (model: Spoilt) => void, string][] = [
    ["an unknown key", (m) => (m.beams[0].colour = "red"), "$.beams[0].colour"],
    ["an unknown key at the top", (m) => (m.title = "x"), "$.title"],
    ["a missing key", (m) => delete m.panels[0].Gt, "$.panels[0]"],
    ["a missing node", (m) => (m.beams[0].j = "z"), "$.beams[0].j"],
    ["a missing node of a panel", (m) => (m.panels[0].nodes[2] = "z"), "$.panels[0].nodes[2]"],
    ["a missing node of a spring", (m) => (m.springs[0].i = "z"), "$.springs[0].i"],
    ["a missing node of a link", (m) => (m.links[0].j = "z"), "$.links[0].j"],
    ["a missing node of a support", (m) => (m.supports[0].node = "z"), "$.supports[0].node"],
    ["a missing section", (m) => (m.beams[0].section = "toString"), "$.beams[0].section"],
    ["a node id used twice", (m) => (m.nodes[3].id = "a"), "$.nodes[3].id"],
    ["a beam id used twice", (m) => m.beams.push({ ...m.beams[0] }), "$.beams[1].id"],
    ["two supports of one node", (m) => m.supports.push({ ...m.supports[0] }), "$.supports[1].node"],
    ["a beam without length", (m) => ((m.nodes[1].x = 0), (m.panels = [])), "$.beams[0]"],
    ["a beam whose arms close it", (m) => (m.beams[0].off_i = [3000, 0, 10]), "$.beams[0]"],
    ["an up along the beam", (m) => (m.beams[0].up = [1, 0, 0]), "$.beams[0].up"],
    ["an up of no length", (m) => (m.beams[0].up = [0, 0, 0]), "$.beams[0].up"],
    ["a panel that is no rectangle", (m) => (m.nodes[2].x = 3100), "$.panels[0].nodes"],
    ["a panel out of its plane", (m) => (m.nodes[2].y = 50), "$.panels[0].nodes"],
    ["a panel with corners in the wrong order", (m) => (m.panels[0].nodes = ["a", "c", "b", "d"]), "$.panels[0].nodes"],
    ["a load on no node", (m) => (m.cases.D.nodal[0].node = "z"), "$.cases.D.nodal[0].node"],
    ["a load on no beam", (m) => (m.cases.D.beam_udl[0].beam = "z"), "$.cases.D.beam_udl[0].beam"],
    ["a settlement where nothing is held", (m) => (m.cases.D.settle[0].dof = "rx"), "$.cases.D.settle[0].dof"],
    ["a combination of no case", (m) => (m.combos.SLS = { X: 1 }), "$.combos.SLS.X"],
    ["an infinite number", (m) => (m.nodes[0].x = Infinity), "$.nodes[0].x"],
    ["a number that is none", (m) => (m.combos.SLS.D = NaN), "$.combos.SLS.D"],
    ["text for a number", (m) => (m.sections["rail 60"].A = "1000"), '$.sections["rail 60"].A'],
    ["a negative stiffness", (m) => (m.springs[0].k[2] = -1), "$.springs[0].k[2]"],
    ["no elasticity", (m) => (m.sections["rail 60"].E = 0), '$.sections["rail 60"].E'],
    ["a list too short", (m) => (m.cases.D.nodal[0].F = [0, 0, 0]), "$.cases.D.nodal[0].F"],
    ["an unknown freedom", (m) => (m.supports[0].fix = ["up"]), "$.supports[0].fix[0]"],
    ["a freedom twice", (m) => (m.beams[0].rel_i = ["ry", "ry"]), "$.beams[0].rel_i[1]"],
    ["compression-only without uz", (m) => (m.supports[0].fix = ["ux"]), "$.supports[0].fix"],
    ["a spring from a node to itself", (m) => (m.springs[0].j = "b"), "$.springs[0].j"],
    ["no nodes", (m) => (m.nodes = []), "$.nodes"],
    ["no combinations", (m) => delete m.combos, "$"],
  ];

  it.each(faults)("%s", (_, change, path) => expect(pathOf(change)).toBe(path));

  it.each([null, 3, "text", [], undefined])("%j instead of an object is refused at the root", (json) => {
    expect(readAnalyticalModel(json)).toMatchObject({ ok: false, path: "$" });
  });
});
