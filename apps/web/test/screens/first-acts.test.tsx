import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { FirstOptions } from "../../src/screens/options/FirstOptions.tsx";
import { FirstBuilt } from "../../src/screens/site/FirstBuilt.tsx";
import { FirstSurvey } from "../../src/screens/survey/FirstSurvey.tsx";

afterEach(cleanup);

describe("a page on which nothing stands yet", () => {
  it.each([
    ["survey", FirstSurvey, "What is done with each container", ["Read its door", "Note the plate"]],
    ["site", FirstBuilt, "How it comes to be built from", ["The engineer stamps it", "Every piece of it is listed"]],
    ["alternatives", FirstOptions, "How one is chosen", ["Say what is to be chosen", "Lay up to six side by side"]],
  ] as const)("tells what it is for in the order of the work: %s", (_, Page, heading, first) => {
    render(<Page />);
    const acts = within(screen.getByRole("region", { name: heading })).getAllByRole("listitem");
    const names = acts.map((act) => within(act).getByRole("heading").lastChild?.textContent);
    expect(names.slice(0, 2)).toEqual(first);
    expect(acts.every((act) => act.querySelector("svg[aria-hidden] path") !== null)).toBe(true);
  });
});
