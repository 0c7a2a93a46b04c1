import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { RemoveSlip } from "../../src/twin/RemoveSlip.tsx";
import { furnished } from "../support/furnished.ts";

afterEach(cleanup);

function asked(ids: readonly string[], standing: readonly string[], undoes: string | null) {
  const done: string[] = [];
  render(
    <RemoveSlip
      scheme={furnished}
      {...{ ids, standing, undoes }}
      onRemove={() => done.push("away")}
      onKeep={() => done.push("kept")}
    />,
  );
  return done;
}

describe("before a thing goes", () => {
  it("what stands on it is named, and what would go stale", () => {
    const done = asked(["s1"], ["f1"], "The stamp on G1 goes stale.");
    expect(screen.getByRole("alert").textContent).toBe("F1 stands on it.The stamp on G1 goes stale.");
    fireEvent.click(screen.getByRole("button", { name: /^Take S1 away all the same/ }));
    fireEvent.click(screen.getByRole("button", { name: /^Keep S1/ }));
    expect(done).toEqual(["away", "kept"]);
  });

  it("what hangs on it goes with it, and what stands on it stays", () => {
    asked(["g1"], ["f1"], null);
    expect(screen.getByRole("alert").textContent).toMatch(
      /would go too\. One step back brings all of it back\.F1 stands on it\.$/,
    );
    screen.getByRole("button", { name: /^Take G1 and what hangs on it away/ });
  });
});
