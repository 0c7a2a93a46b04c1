import { defaultBasis, type DesignBasis, type Operation, type Seat } from "@cornerway/schema";
import { Seat as SeatSchema } from "@cornerway/schema";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import BasisForm from "../../src/twin/BasisForm.tsx";
import { SheetWallsForm } from "../../src/twin/SheetWallsForm.tsx";
import { seatFields } from "../../src/twin/fields/added-steel-fields.ts";
import { settleFraming } from "../../src/twin/fields/opening-fields.ts";
import { PartForm } from "../../src/twin/part/PartForm.tsx";
import { valueAt, withValueAt } from "../../src/twin/part/path.ts";
import { opening, seat } from "../support/furnished.ts";

afterEach(cleanup);

function seatForm() {
  const drawn: Seat[] = [];
  render(
    <PartForm
      element={seat}
      schema={SeatSchema}
      fields={seatFields}
      command="Draw S1 so"
      onElement={(next) => drawn.push(next)}
    />,
  );
  return drawn;
}

const type = (label: string, text: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value: text } });
const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));

describe("a part's form", () => {
  it("reads a bare packing as millimetres and leaves every untouched value as it was", () => {
    const drawn = seatForm();
    type("Packing, mm", "40");
    press("Draw S1 so");
    expect(drawn).toEqual([{ ...seat, packingUm: 40_000 }]);
  });

  it("tells what stands typed at each stroke, nothing while it makes no sense, and nothing once it is drawn", () => {
    const told: (number | null)[] = [];
    render(
      <PartForm
        {...{ element: seat, schema: SeatSchema, fields: seatFields, command: "Draw S1 so" }}
        onElement={() => undefined}
        onTyping={(next) => told.push(next?.packingUm ?? null)}
      />,
    );
    type("Packing, mm", "40");
    type("Packing, mm", "40 thick");
    type("Packing, mm", "41");
    press("Draw S1 so");
    expect(told).toEqual([40_000, null, 41_000, null]);
  });

  it("refuses nonsense at its place and draws nothing", () => {
    const drawn = seatForm();
    type("Packing, mm", "thick");
    press("Draw S1 so");
    expect(screen.getByLabelText("Packing, mm").getAttribute("aria-invalid")).toBe("true");
    expect(screen.getByRole("alert").textContent).toMatch(/^A small length, such as 40/);
    type("Packing, mm", "0");
    press("Draw S1 so");
    expect(screen.getByRole("alert").textContent).toBe("At least 0.001 mm.");
    expect(drawn).toEqual([]);
  });

  it("states what may be left open, and opens it again when the field is emptied", () => {
    const drawn = seatForm();
    type("Level error, mm", "-3");
    press("Draw S1 so");
    type("Level error, mm", "");
    press("Draw S1 so");
    expect(drawn.map((each) => each.levelErrorUm)).toEqual([-3000, undefined]);
    expect("levelErrorUm" in (drawn[1] ?? {})).toBe(false);
  });
});

describe("the form of the sheet walls on a change request", () => {
  it("lays the choice with its reason on the request, and leaves the rest of the basis alone", () => {
    const asked: DesignBasis[] = [];
    render(<SheetWallsForm basis={defaultBasis} onBasis={(basis) => asked.push(basis)} />);
    press("Lay it on the request");
    expect(asked).toEqual([]);
    fireEvent.change(screen.getByLabelText("Sheet walls"), { target: { value: "cap raised" } });
    type("Cap, kN/m", "9");
    type("Why", "Tested.");
    press("Lay it on the request");
    expect(asked).toEqual([{ ...defaultBasis, sheetWalls: { rule: "cap raised", capNPerM: 9000, reason: "Tested." } }]);
  });

  it("asks for what the rule asks for, also once a change of it is taken back", () => {
    const leftOut: DesignBasis = { ...defaultBasis, sheetWalls: { rule: "left out", reason: "Cut later." } };
    const { rerender } = render(<SheetWallsForm basis={leftOut} onBasis={() => undefined} />);
    expect(screen.getByLabelText("Why")).toBeDefined();
    rerender(<SheetWallsForm basis={defaultBasis} onBasis={() => undefined} />);
    expect(screen.queryByLabelText("Why")).toBeNull();
  });
});

describe("the form of the design basis", () => {
  function basisForm(basis: DesignBasis = defaultBasis) {
    const drawn: Operation[] = [];
    render(<BasisForm basis={basis} edition="IBC 2024" onDraw={(operations) => drawn.push(...operations)} />);
    return drawn;
  }

  it("states hazards, each with the edition it was read for, as one change of the basis", () => {
    const drawn = basisForm();
    press("State the hazards of the site");
    type("Basic speed, m/s", "51.4");
    type("Ss, g", "0,85");
    press("Take this as the basis");
    expect(drawn).toHaveLength(1);
    const [change] = drawn;
    if (change?.kind !== "basis.change") throw new Error("the basis changes");
    expect(change.basis.hazards?.wind).toMatchObject({ edition: "IBC 2024", speedMs: 51.4 });
    expect(change.basis.hazards?.seismic).toMatchObject({ edition: "IBC 2024", ss: 0.85 });
  });

  it("refuses what no site has, at its place", () => {
    const drawn = basisForm();
    press("State the hazards of the site");
    type("Basic speed, m/s", "900");
    type("Concrete, MPa", "3");
    press("Take this as the basis");
    expect(screen.getAllByRole("alert").map(({ textContent }) => textContent)).toEqual([
      "At most 150 m/s.",
      "At least 10 MPa.",
    ]);
    expect(drawn).toEqual([]);
  });

  it("asks for the reason where sheet walls are left out, and forgets it where they are counted again", () => {
    const drawn = basisForm();
    fireEvent.change(screen.getByLabelText("Sheet walls"), { target: { value: "left out" } });
    press("Take this as the basis");
    expect(screen.getByRole("alert").textContent).toBe("State this as well, or leave all of them empty.");
    type("Why", "Walls are cut on every side.");
    press("Take this as the basis");
    expect(drawn).toEqual([
      {
        kind: "basis.change",
        basis: { ...defaultBasis, sheetWalls: { rule: "left out", reason: "Walls are cut on every side." } },
      },
    ]);
  });

  it("warns where values were read for another edition than the project's", () => {
    const hazards = {
      riskCategory: "II",
      wind: { edition: "IBC 2021", speedMs: 50, exposure: "C", elevationM: 0, topographicFactor: 1 },
      snow: { edition: "IBC 2024", groundPa: 0, roofExposure: "sheltered", thermal: "heated" },
      seismic: { edition: "IBC 2024", ss: 0, s1: 0, siteClass: "D", longPeriodS: 8 },
    } as const;
    basisForm({ ...defaultBasis, hazards });
    expect(screen.getByRole("note").textContent).toMatch(/^Values read for IBC 2021 stand under a project of IBC 2024/);
  });
});

describe("settleFraming(opening)", () => {
  it("gives the header the section of the jambs until it has its own, and a bare opening none", () => {
    const jambs = withValueAt(opening, "framing.jamb", "HSS4x3x1/4");
    expect(valueAt(settleFraming(jambs), "framing")).toEqual({ jamb: "HSS4x3x1/4", header: "HSS4x3x1/4" });
    expect("framing" in settleFraming({ ...jambs, framed: false })).toBe(false);
  });
});
