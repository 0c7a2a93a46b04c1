import { premium } from "@cornerway/engine";
import { demoCostBook, type Mark } from "@cornerway/schema";
import { createMemoryHistory, createRootRoute, createRouter, RouterProvider } from "@tanstack/react-router";
import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, expect, it } from "vitest";
import { PremiumLine } from "../../src/prices/PremiumLine.tsx";
import { furnished } from "../support/furnished.ts";

afterEach(cleanup);

const leftOpen: Mark = {
  ...{ id: "m1", verdict: "needs the engineer", elements: ["o1"], certainty: "derived", basis: "a test" },
  ...{ at: { xMm: 0, yMm: 0, zMm: 0 }, fact: { kind: "openings-overlap" } },
};

it("the line of the premium says in words what it does not hold, where one need not point at it", async () => {
  const priced = premium(furnished, demoCostBook, [leftOpen]);
  const root = createRootRoute({ component: () => <PremiumLine projectId="p1" premium={priced} /> });
  render(<RouterProvider router={createRouter({ routeTree: root, history: createMemoryHistory() })} />);
  expect(
    await screen.findByText(/^One place stands apart without a price: what it needs is not known\./),
  ).toBeDefined();
});
