import { emptyScheme, schemeFile, type Operation } from "@cornerway/schema";
import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it } from "vitest";
import { BringIn } from "../../src/screens/scheme/BringIn.tsx";
import { readFile } from "../../src/screens/scheme/read-file.ts";

afterEach(cleanup);

const unit = { id: "g1", tag: "G1", type: "1CC", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 } as const;
const scheme = { ...emptyScheme, containers: [unit] };
const saved = schemeFile({ project: "Lock Lane", revision: null, contentDigest: "0".repeat(64), scheme });
const fileOf = (value: unknown) =>
  new File([typeof value === "string" ? value : JSON.stringify(value)], "lock-lane.json", { type: "application/json" });

async function bring(value: unknown, draft = emptyScheme) {
  const drawn: Operation[][] = [];
  render(
    <BringIn
      scheme={draft}
      asleepBecause={undefined}
      onDraw={(operations) => {
        drawn.push(operations);
        return true;
      }}
    />,
  );
  await userEvent.upload(screen.getByLabelText("Scheme file to bring in"), fileOf(value));
  return drawn;
}

describe("<BringIn>", () => {
  it("draws what the file holds as one move, and says that it is taken back like one", async () => {
    const drawn = await bring(saved);
    expect((await screen.findByRole("status")).textContent).toContain("One step back takes it back");
    expect(drawn).toEqual([[{ kind: "container.place", container: unit }]]);
  });

  it("draws nothing from a file whose scheme is on the sheet already", async () => {
    const drawn = await bring(saved, scheme);
    expect((await screen.findByRole("status")).textContent).toContain("holds already");
    expect(drawn).toEqual([]);
  });

  it("names the places of a file that is not as it must be, and draws nothing", async () => {
    const faulty = { ...saved, scheme: { ...scheme, containers: [{ ...unit, turnMdeg: -1 }] } };
    expect(await bring(faulty)).toEqual([]);
    expect((await screen.findByRole("alert")).textContent).toContain("/scheme/containers/0/turnMdeg");
  });

  it("asleep, it says why and opens no file", () => {
    render(<BringIn scheme={scheme} onDraw={() => true} asleepBecause="Only the architect draws." />);
    expect(screen.getByRole("button").getAttribute("aria-disabled")).toBe("true");
    expect(screen.getByRole("button").title).toBe("Only the architect draws.");
  });
});

describe("readFile(file)", () => {
  it("says of a file that is no JSON, or too large, that it is", async () => {
    expect(await readFile(fileOf("{"))).toEqual({ ok: false, faults: [{ pointer: "", detail: "it is not JSON" }] });
    const large = { size: 4 * 1024 * 1024 + 1, text: async () => "{}" };
    expect(await readFile(large)).toMatchObject({ faults: [{ detail: "it is larger than 4 MB" }] });
  });

  it("names the first eight faults and how many more there are", async () => {
    const containers = Array.from({ length: 12 }, (_, n) => ({ ...unit, id: `g${n + 10}`, xUm: "far" }));
    const read = await readFile(fileOf({ ...saved, scheme: { ...scheme, containers } }));
    expect(read.ok).toBe(false);
    expect(!read.ok && read.faults.at(-1)).toEqual({ pointer: "", detail: "and 4 more" });
    expect(!read.ok && read.faults).toHaveLength(9);
  });
});
