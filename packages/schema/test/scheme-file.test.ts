import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { cautions, emptyScheme, readSchemeFile, schemeFile, SchemeFile } from "../src/index.ts";

const saved = schemeFile({
  project: "Lock Lane",
  revision: "B",
  contentDigest: "0".repeat(64),
  scheme: emptyScheme,
});
const faults = (value: unknown) => {
  const read = readSchemeFile(value);
  return read.ok ? [] : read.fields.map(({ pointer }) => pointer);
};

describe("a scheme file", () => {
  it("says what it is and carries the five cautions", () => {
    expect(SchemeFile.parse(saved).cautions).toEqual([...cautions]);
    expect(saved).toMatchObject({ format: "cornerway-scheme", version: 1, revision: "B" });
  });

  it("is read back as the scheme that was saved", () => {
    expect(readSchemeFile(JSON.parse(JSON.stringify(saved)))).toEqual({ ok: true, scheme: emptyScheme });
  });

  it("may leave out all but what it is and what is drawn", () => {
    const { format, version, scheme } = saved;
    expect(readSchemeFile({ format, version, scheme })).toEqual({ ok: true, scheme: emptyScheme });
  });

  it("whose scheme is of version 1 is raised to the present one", () => {
    const older: unknown = JSON.parse(
      readFileSync(path.resolve(import.meta.dirname, "fixtures/scheme-version-1.json"), "utf8"),
    );
    const read = readSchemeFile({ ...saved, scheme: older });
    expect(read.ok && read.scheme.version).toBe(emptyScheme.version);
  });

  it.each([
    ["no object", 7, [""]],
    ["another format", { ...saved, format: "something else" }, ["/format"]],
    ["a later version of the file", { ...saved, version: 2 }, ["/version"]],
    ["a later version of the scheme", { ...saved, scheme: { ...emptyScheme, version: 99 } }, ["/scheme/version"]],
    ["no scheme", { ...saved, scheme: [] }, ["/scheme"]],
    ["an unknown field of the scheme", { ...saved, scheme: { ...emptyScheme, colour: "red" } }, ["/scheme"]],
    [
      "a place that is no number",
      { ...saved, scheme: { ...emptyScheme, site: { ...emptyScheme.site, groundZUm: "0" } } },
      ["/scheme/site/groundZUm"],
    ],
  ])("with %s is refused at its place", (_what, value, pointers) => {
    expect(faults(value)).toEqual(pointers);
  });
});
