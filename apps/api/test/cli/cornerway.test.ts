import { Assessment, cautionLine, cautions } from "@cornerway/schema";
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../../../", import.meta.url));
const demo = path.join(root, "shared/demo/scheme.json");
const source = pathToFileURL(path.join(root, "apps/api/src/cli.ts")).href;

/** The command run from source in a process of its own, as the built one is by `npx cornerway`. */
function cornerway(words: readonly string[], stdin = "") {
  const script = `const { runCommand } = await import(${JSON.stringify(source)}); process.exitCode = await runCommand(process.argv.slice(1));`;
  const flags = ["--conditions=development", "--import", "tsx", "--input-type=module", "-e", script, "--", ...words];
  return spawnSync(process.execPath, flags, { cwd: root, input: stdin, encoding: "utf8" });
}

describe("cornerway assess", () => {
  it("prints both digests and the assessment of a file as JSON and ends with 0", () => {
    const { status, stdout, stderr } = cornerway(["assess", demo]);
    expect(stderr).toBe("");
    expect(status).toBe(0);
    const answer: unknown = JSON.parse(stdout);
    expect(answer).toMatchObject({
      contentDigest: expect.stringMatching(/^[0-9a-f]{64}$/),
      resultDigest: expect.stringMatching(/^[0-9a-f]{64}$/),
    });
    const { assessment } = answer as { assessment: unknown };
    expect(Assessment.parse(assessment).units).toHaveLength(9);
  });

  it("gives the same answer for the same scheme from standard input", () => {
    expect(cornerway(["assess", "-"], readFileSync(demo, "utf8")).stdout).toBe(cornerway(["assess", demo]).stdout);
  });

  it("prints text with the caution line first and all five cautions for --text", () => {
    const { status, stdout } = cornerway(["assess", demo, "--text"]);
    expect(status).toBe(0);
    expect(stdout.startsWith(`${cautionLine}\n`)).toBe(true);
    for (const caution of cautions) expect(stdout).toContain(caution);
    expect(stdout).toContain("load path only, no strength checked");
    expect(stdout).toMatch(/LOAD PATH\n {2}\S/);
  });

  it("names the place of a wrong field by JSON pointer and ends with 1", () => {
    const scheme = JSON.parse(readFileSync(demo, "utf8")) as { containers: { type: string }[] };
    const containers = scheme.containers.map((container, at) => (at === 2 ? { ...container, type: "1ZZ" } : container));
    const { status, stdout, stderr } = cornerway(["assess", "-"], JSON.stringify({ ...scheme, containers }));
    expect(status).toBe(1);
    expect(stdout).toBe("");
    expect(stderr).toMatch(/^standard input: \/containers\/2\/type: /);
  });

  it("names an opening of a container that is not there", () => {
    const scheme = JSON.parse(readFileSync(demo, "utf8")) as { openings: { containerId: string }[] };
    const openings = scheme.openings.map((opening, at) => (at === 0 ? { ...opening, containerId: "gone" } : opening));
    const { status, stderr } = cornerway(["assess", "-"], JSON.stringify({ ...scheme, openings }));
    expect(status).toBe(1);
    expect(stderr).toBe("standard input: /openings/0/containerId: there is no container gone\n");
  });

  it("ends with 1 on text that is not JSON, a file that is not there and words it does not know", () => {
    expect(cornerway(["assess", "-"], "{").status).toBe(1);
    expect(cornerway(["assess", "no-such-file.json"]).status).toBe(1);
    expect(cornerway(["assess", demo, "--colour"]).stderr).toMatch(/^usage: /);
    expect(cornerway([]).status).toBe(1);
  });
});

describe("cornerway frame", () => {
  it("solves a reference model and ends with 0", () => {
    const model = path.join(root, "shared/reference/models/D01.model.json");
    const { status, stdout } = cornerway(["frame", model]);
    expect(status).toBe(0);
    expect(Object.keys((JSON.parse(stdout) as { combos: object }).combos).length).toBeGreaterThan(0);
  });

  it("names the place of a fault in the model and ends with 1", () => {
    const { status, stderr } = cornerway(["frame", "-"], JSON.stringify({ nodes: 1 }));
    expect(status).toBe(1);
    expect(stderr).toMatch(/^standard input: \$/);
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
