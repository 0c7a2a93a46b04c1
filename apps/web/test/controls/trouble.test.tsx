import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { Trouble } from "../../src/controls/Trouble.tsx";
import { read } from "../../src/data/api/client.ts";

afterEach(cleanup);

describe("an answer of another shape than the page knows", () => {
  const answer = Promise.resolve({ data: { name: 3 }, response: new Response(null, { status: 200 }) });

  it("is told as the page being of another day, and the page can be fetched anew", async () => {
    const error: unknown = await read(z.strictObject({ name: z.string() }), answer).catch((thrown: unknown) => thrown);
    render(<Trouble error={error} />);
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("This page is of another day than the service");
    expect(screen.getByRole("button", { name: "Fetch the page anew" })).toBeDefined();
    expect(document.body.textContent).not.toContain("invalid_type");
  });
});

describe("a part of the page that cannot be fetched", () => {
  it.each([
    "Failed to fetch dynamically imported module: https://office.example/assets/part.js",
    "error loading dynamically imported module: https://office.example/assets/part.js",
    "Importing a module script failed.",
  ])("is told as that, not in the words of the browser: %s", (message) => {
    render(<Trouble error={new TypeError(message)} />);
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("A part of this page did not come");
    expect(screen.getByRole("button", { name: "Fetch the page anew" })).toBeDefined();
    expect(document.body.textContent).not.toContain("part.js");
  });
});
