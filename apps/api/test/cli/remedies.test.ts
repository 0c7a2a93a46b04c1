import { cautionLine, emptyScheme, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { remediesCommand } from "../../src/cli/remedies-command.ts";

const pad = (id: string, xUm: number, yUm: number): Scheme["pads"][number] => ({
  ...{ id, tag: `B${id.charCodeAt(0) - 96}`, xUm, yUm, topZUm: 0, turnMdeg: 0 },
  ...{ lengthUm: 1_200_000, widthUm: 1_200_000, depthUm: 400_000 },
});
/** Two 10 ft units, the upper one 20 mm off: its corners need made connections. */
const scheme: Scheme = {
  ...emptyScheme,
  containers: [
    { id: "g1", tag: "G1", type: "1D", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 },
    { id: "u1", tag: "U1", type: "1D", xUm: 20_000, yUm: 0, zUm: 2_438_000, turnMdeg: 0 },
  ],
  pads: [
    pad("a", -1_393_500, -1_129_500),
    pad("b", -1_393_500, 1_129_500),
    pad("c", 1_393_500, -1_129_500),
    pad("d", 1_393_500, 1_129_500),
  ],
};
const run = (markId: string | undefined, asJson = false) =>
  remediesCommand({ name: "scheme.json", value: scheme }, markId, asJson);

describe("cornerway remedies", () => {
  it("lists the marks that something is known for, under the caution", () => {
    const { out, code } = run(undefined);
    expect(code).toBe(0);
    expect(out.startsWith(cautionLine)).toBe(true);
    expect(out).toContain("made-connection:u1+g1");
  });

  it("gives the ways as text and as JSON, cheapest first, with the same operations", { timeout: 120_000 }, () => {
    const text = run("made-connection:u1+g1").out;
    expect(text).toContain("CHEAPEST FIRST");
    expect(text).toContain("Move U1 0.02 m west so that four corners land on fittings.");
    expect(text).toContain("Hold U1 down at four bearings with welded plates.");
    const { offered } = JSON.parse(run("made-connection:u1+g1", true).out) as {
      offered: { operations: unknown[]; premium: { money: number } }[];
    };
    expect(offered.map(({ premium }) => premium.money)).toEqual(
      offered.map(({ premium }) => premium.money).toSorted((a, b) => a - b),
    );
    expect(offered[0]?.operations).toEqual([{ kind: "container.move", id: "u1", xUm: 0, yUm: 0, zUm: 2_438_000 }]);
  });

  it("says what is wrong with a mark that is not there, and writes nothing else", () => {
    expect(run("tips-over:u1")).toEqual({
      out: "",
      err: "scheme.json: no mark tips-over:u1 that something is known for\n",
      code: 1,
    });
  });
});
