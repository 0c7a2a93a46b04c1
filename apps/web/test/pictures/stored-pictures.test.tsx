import { act, cleanup, render } from "@testing-library/react";
import { existsSync } from "node:fs";
import path from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { demoScheme } from "../support/demo-scheme.ts";
import { quarryStepsScheme, sheetsOf, sheetsOfRequest, sheetsWithout } from "./sheets.tsx";
import { storedGeometry } from "./stored-geometry.ts";

afterEach(cleanup);

const stored = (name: string) => path.join(import.meta.dirname, "stored", `${name}.txt`);
const sheets = [
  ...sheetsOf("main", demoScheme),
  ...sheetsOf("quarry-steps", quarryStepsScheme),
  ...sheetsOfRequest(),
  ...sheetsWithout,
];

/** Written anew by `npx vitest run --project web apps/web/test/pictures -u`, to be looked through before it is kept. */
describe("the drawing of each sheet is as it was stored", () => {
  it.each(sheets)("$name", async ({ name, drawn }) => {
    const { container } = render(drawn());
    await act(() => vi.dynamicImportSettled()); // some parts of a drawing are fetched when they are first drawn
    expect(container.querySelector("svg")).not.toBeNull();
    const updates = expect.getState().snapshotState.snapshotUpdateState === "all";
    expect(updates || existsSync(stored(name)), `${name} is stored`).toBe(true);
    await expect(storedGeometry(container)).toMatchFileSnapshot(stored(name));
  });
});

it("a single line or shape is made lighter by its ink: opacity would have the browser lay it as a layer of its own", () => {
  for (const { name, drawn } of sheetsOf("main", demoScheme)) {
    const { container } = render(drawn());
    const layers = container.querySelectorAll(":is(path, rect, circle, text)[opacity]");
    expect(
      [...layers].filter((each) => each.closest("defs") === null),
      name,
    ).toEqual([]);
  }
});

describe("a stored drawing", () => {
  const geometryOf = (d: string) =>
    storedGeometry(
      render(
        <svg>
          <g>
            <path d={d} id="any" />
          </g>
        </svg>,
      ).container.querySelector("svg") as Element,
    );

  it("is the same for lines a tenth of a px apart, and another for lines a px apart", () => {
    expect(geometryOf("M0 0L10.1 5")).toBe(geometryOf("M0 0L10.2 5"));
    expect(geometryOf("M0 0L10 5")).not.toBe(geometryOf("M0 0L11 5"));
  });
});
