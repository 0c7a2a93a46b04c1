import { Assessment, cautionLine, cautions } from "@cornerway/schema";
import { spawnSync } from "node:child_process";
import { randomUUID } from "node:crypto";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { commandAnswer } from "../../src/cli/command-answer.ts";

const root = fileURLToPath(new URL("../../../../", import.meta.url));
const demo = path.join(root, "shared/demo/scheme.json");
const source = pathToFileURL(path.join(root, "apps/api/src/cli.ts")).href;
const folder = mkdtempSync(path.join(tmpdir(), "cornerway-cli-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** What the command line answers, asked in this process. */
const cornerway = (...words: string[]) => commandAnswer(words);

/** The command run from source in a process of its own, as the built one is by `npx cornerway`. */
function cornerwayProcess(words: readonly string[], stdin: string) {
  const script = `const { runCommand } = await import(${JSON.stringify(source)}); process.exitCode = await runCommand(process.argv.slice(1));`;
  const flags = ["--conditions=development", "--import", "tsx", "--input-type=module", "-e", script, "--", ...words];
  return spawnSync(process.execPath, flags, { cwd: root, input: stdin, encoding: "utf8", maxBuffer: 64e6 });
}

/** A file that holds `value` as JSON. */
function fileOf(value: unknown): string {
  const file = path.join(folder, `${randomUUID()}.json`);
  writeFileSync(file, JSON.stringify(value));
  return file;
}

describe("cornerway assess", () => {
  it("prints both digests and the assessment of a file as JSON and ends with 0", async () => {
    const { code, out, err } = await cornerway("assess", demo, "--load-path");
    expect(err).toBe("");
    expect(code).toBe(0);
    const answer: unknown = JSON.parse(out);
    expect(answer).toMatchObject({
      contentDigest: expect.stringMatching(/^[0-9a-f]{64}$/),
      resultDigest: expect.stringMatching(/^[0-9a-f]{64}$/),
    });
    const { assessment } = answer as { assessment: unknown };
    expect(Assessment.parse(assessment).units).toHaveLength(9);
  });

  it("gives the same answer for the same scheme from standard input, on standard output", async () => {
    const { status, stdout } = cornerwayProcess(["assess", "-", "--load-path"], readFileSync(demo, "utf8"));
    expect(status).toBe(0);
    expect(stdout).toBe((await cornerway("assess", demo, "--load-path")).out);
  });

  it("prints text with the caution line first and all five cautions for --text", async () => {
    const { code, out } = await cornerway("assess", demo, "--text", "--load-path");
    expect(code).toBe(0);
    expect(out.startsWith(`${cautionLine}\n`)).toBe(true);
    for (const caution of cautions) expect(out).toContain(caution);
    expect(out).toContain("load path only, no strength checked");
    expect(out).toMatch(/LOAD PATH\n {2}\S/);
  });

  it("names the place of a wrong field by JSON pointer and ends with 1", async () => {
    const scheme = JSON.parse(readFileSync(demo, "utf8")) as { containers: { type: string }[] };
    const containers = scheme.containers.map((container, at) => (at === 2 ? { ...container, type: "1ZZ" } : container));
    const file = fileOf({ ...scheme, containers });
    const { code, out, err } = await cornerway("assess", file);
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(err.startsWith(`${file}: /containers/2/type: `), err).toBe(true);
  });

  it("names an opening of a container that is not there", async () => {
    const scheme = JSON.parse(readFileSync(demo, "utf8")) as { openings: { containerId: string }[] };
    const openings = scheme.openings.map((opening, at) => (at === 0 ? { ...opening, containerId: "gone" } : opening));
    const file = fileOf({ ...scheme, openings });
    const { code, err } = await cornerway("assess", file);
    expect(code).toBe(1);
    expect(err).toBe(`${file}: /openings/0/containerId: there is no container gone\n`);
  });

  it("ends with 1 on text that is not JSON, a file that is not there and words it does not know", async () => {
    expect(cornerwayProcess(["assess", "-"], "{")).toMatchObject({
      ...{ status: 1, stdout: "" },
      stderr: expect.stringMatching(/^standard input: is not JSON: /),
    });
    expect(await cornerway("assess", "no-such-file.json")).toMatchObject({ code: 1, out: "" });
    expect((await cornerway("assess", demo, "--colour")).err).toMatch(/^usage: /);
    for (const words of [[], ["assess"], ["assess", demo, demo], ["frame", demo, "--text"], ["toString", demo]])
      expect(await cornerway(...words), words.join(" ")).toMatchObject({
        code: 1,
        out: "",
        err: expect.stringMatching(/^usage: /),
      });
  });
});

describe("cornerway assess --model", () => {
  type Load = { containerId: string; case: string; pressurePa: number };
  type Drawn = { containers: { id: string; type: string }[]; openings: Load[]; loads: Load[] };
  type Line = {
    nodes: { id: string; x: number; y: number; z: number }[];
    beams: { id: string; i: string; j: string }[];
  };
  type Cases = { cases: Record<"D" | "L", { beam_udl: { beam: string; q: [number, number, number] }[] }> };
  type Solved = { equilibrium: number[]; residual: number; reactions: Record<string, number[]> };

  /** The demo without the unit that tips over. */
  function standing(): Drawn {
    const { containers, openings, loads, ...rest } = JSON.parse(readFileSync(demo, "utf8")) as Drawn;
    const stays = ({ containerId }: { containerId: string }) => containerId !== "t1";
    return {
      ...rest,
      containers: containers.filter(({ id }) => id !== "t1"),
      openings: openings.filter(stays),
      loads: loads.filter(stays),
    };
  }

  it("writes a line model that `frame -` solves: reactions balance the loads written in it, and L is pressure times plan area", async () => {
    const scheme = standing();
    const written = await cornerway("assess", fileOf(scheme), "--model");
    expect(written.code).toBe(0);
    const line = JSON.parse(written.out) as Line & Cases;
    const solved = await cornerway("frame", fileOf(line));
    expect(solved.err).toBe("");
    const { combos } = JSON.parse(solved.out) as { combos: Record<"D" | "D+L", Solved> };
    const downN = ({ reactions }: Solved) => Object.values(reactions).reduce((sum, [, , z = 0]) => sum + z, 0);

    // every load of the file is uniform on a beam: force = q times the distance between its nodes
    const { nodes, beams, cases } = line;
    const place = new Map(nodes.map((node) => [node.id, node]));
    const length = new Map(
      beams.map(({ id, i, j }) => {
        const [a, b] = [place.get(i), place.get(j)];
        return [id, a && b ? Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) : NaN];
      }),
    );
    const deadN = cases.D.beam_udl.reduce((sum, { beam, q }) => sum - q[2] * (length.get(beam) ?? NaN), 0);
    expect(downN(combos.D) / deadN).toBeCloseTo(1, 6);

    // outer lengths and width of ISO 668: 12,192, 6,058 and 2,438 mm
    const areaM2: Record<string, number> = { "1AAA": 12.192 * 2.438, "1CCC": 6.058 * 2.438 };
    const typeOf = new Map(scheme.containers.map(({ id, type }) => [id, type]));
    const imposedN = scheme.loads
      .filter((load) => load.case === "imposed")
      .reduce(
        (sum, { containerId, pressurePa }) => sum + pressurePa * (areaM2[typeOf.get(containerId) ?? ""] ?? NaN),
        0,
      );
    expect((downN(combos["D+L"]) - downN(combos.D)) / imposedN).toBeCloseTo(1, 6);

    for (const { equilibrium, residual } of Object.values(combos)) {
      expect(Math.max(...equilibrium.slice(0, 3).map(Math.abs)) / imposedN).toBeLessThan(1e-9);
      expect(residual).toBeLessThan(1e-6); // rounding of K·u beside the largest nodal load
    }
  }, 60_000);

  it("writes the model of a building with a unit that tips over, which `frame -` refuses in words that name the unit", async () => {
    const written = await cornerway("assess", demo, "--model");
    expect(written.err).toMatch(/^note: hatch not modelled: h\d\n/);
    const solved = await cornerway("frame", fileOf(JSON.parse(written.out)));
    const { combos } = JSON.parse(solved.out) as { combos: { D: { refused: string } } };
    expect(combos.D.refused).toMatch(/^No equilibrium once bearings open: nodes t1:/);
  }, 60_000);

  it("keeps still and ends with 0 when its reader closes the pipe early", () => {
    const script = `const { runCommand } = await import(${JSON.stringify(source)}); process.exitCode = await runCommand(["assess", ${JSON.stringify(demo)}, "--model"]);`;
    const line = `"$0" --conditions=development --import tsx --input-type=module -e "$1" | head -c 10; echo " \${PIPESTATUS[0]}"`;
    const { stdout, stderr } = spawnSync("bash", ["-c", line, process.execPath, script], {
      cwd: root,
      encoding: "utf8",
    });
    expect(stdout).toBe('{"nodes":[ 0\n');
    expect(stderr).not.toMatch(/EPIPE|internal/);
  }, 60_000);

  it("takes one form at a time", async () => {
    expect((await cornerway("assess", demo, "--model", "--text")).err).toMatch(/^usage: /);
  });
});

describe("cornerway frame", () => {
  it("solves a reference model and ends with 0", async () => {
    const model = path.join(root, "shared/reference/models/D01.model.json");
    const { code, out } = await cornerway("frame", model);
    expect(code).toBe(0);
    expect(Object.keys((JSON.parse(out) as { combos: object }).combos).length).toBeGreaterThan(0);
  });

  it("names the place of a fault in the model and ends with 1", async () => {
    const file = fileOf({ nodes: 1 });
    const { code, err } = await cornerway("frame", file);
    expect(code).toBe(1);
    expect(err.startsWith(`${file}: $`), err).toBe(true);
  });
});

describe("bin/cornerway.mjs", () => {
  it("says what to do in one line where the project is not built, and ends with 2", () => {
    const folder = mkdtempSync(path.join(tmpdir(), "cornerway-bin-"));
    try {
      mkdirSync(path.join(folder, "bin"));
      copyFileSync(path.join(root, "apps/api/bin/cornerway.mjs"), path.join(folder, "bin/cornerway.mjs"));
      const { status, stderr } = spawnSync(process.execPath, [path.join(folder, "bin/cornerway.mjs")], {
        encoding: "utf8",
      });
      expect(stderr).toBe("cornerway is not built yet: npm run build first\n");
      expect(status).toBe(2);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
