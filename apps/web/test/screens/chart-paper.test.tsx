import { render, screen } from "@testing-library/react";
import { expect, it } from "vitest";
import { ChartPaper } from "../../src/screens/openings/ChartPaper.tsx";
import { firstChoice, requestOf } from "../../src/screens/openings/chart-choice.ts";
import { demoScheme } from "../support/demo-scheme.ts";

it("shows the wall with its openings while the building is still being solved", () => {
  const choice = firstChoice(demoScheme);
  if (choice === null) throw new Error("the demo has containers");
  const nothing = () => undefined;
  render(
    <ChartPaper
      {...{
        scheme: demoScheme,
        request: requestOf(demoScheme, choice),
        name: "G1",
        opening: undefined,
        asTable: false,
      }}
      place={{ widthPx: 900, heightPx: 868, leftPx: 150, topPx: 16 }}
      live={{ so: null, stop: nothing, again: nothing, confirm: nothing }}
      under="gravity loads only"
      tagOf={(id) => id}
      tried={{ centreMm: 5000, widthMm: 2000 }}
      onTry={nothing}
      table={null}
      onScale={nothing}
    />,
  );
  expect(screen.getByRole("status").textContent).toBe("The building is solved first, with the opening in its place.");
  expect(screen.getByRole("img", { name: /0 places traced/ }).querySelectorAll("rect").length).toBeGreaterThanOrEqual(
    4,
  );
});
