import { acts, mayDo, maySee, recordKinds, roles, type Act, type ProjectMember } from "@cornerway/schema";
import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { PeopleAct } from "../../src/data/people.ts";
import { MayTables } from "../../src/screens/people/MayTables.tsx";
import { MemberTable } from "../../src/screens/people/MemberTable.tsx";

afterEach(cleanup);

const at = "2027-03-10T09:00:00.000Z";
const member = (id: number, name: string, part: Partial<ProjectMember["parts"][number]>): ProjectMember => ({
  id: `00000000-0000-4000-8000-00000000000${id}`,
  name,
  email: null,
  licence: null,
  parts: [{ role: "owner", since: at, confirmedAt: null, expiresAt: null, ...part }],
});
const [olm, ebba, nadia] = [
  member(1, "Olm Sorrel", {}),
  { ...member(2, "Ebba Thorne", { role: "engineer" }), licence: { number: "SE 40117", jurisdiction: "Fenmark" } },
  member(3, "Nadia Wren", { role: "reader", expiresAt: "2027-06-01T12:00:00.000Z" }),
];

function show(may: readonly Act[], meId = olm?.id ?? "") {
  const onAct = vi.fn<(what: PeopleAct) => void>();
  render(<MemberTable members={[olm, ebba, nadia]} acts={may} meId={meId} onAct={onAct} />);
  return onAct;
}

describe("the members of a project", () => {
  it("are each told with their part, how it stands, and the licence as stated by them", () => {
    show(["read-people"]);
    const engineer = within(screen.getByRole("row", { name: /Ebba Thorne/ }));
    expect(engineer.queryByText("Waits for the owner's word; reads, and does nothing else")).not.toBeNull();
    expect(
      engineer.queryByText("Licence SE 40117, Fenmark, as stated by Ebba Thorne. Not verified here."),
    ).not.toBeNull();
    expect(screen.queryByText("Until 1 Jun 2027")).not.toBeNull();
    expect(screen.queryByText(/Olm Sorrel \(you\)/)).not.toBeNull();
    expect(screen.queryAllByRole("button")).toEqual([]);
  });

  it("are confirmed by the owner, and by nobody themselves", () => {
    const onAct = show(["confirm-engineer"]);
    fireEvent.click(screen.getByRole("button", { name: "Ebba Thorne is the engineer" }));
    expect(onAct).toHaveBeenCalledExactlyOnceWith({ act: "confirm", personId: ebba?.id });
    cleanup();
    const asEbba = show(["confirm-engineer"], ebba?.id);
    fireEvent.click(screen.getByRole("button", { name: /Another owner confirms you/ }));
    expect(asEbba).not.toHaveBeenCalled();
  });

  it("lose their part only after a second press", () => {
    const onAct = show(["remove-person"]);
    fireEvent.click(screen.getByRole("button", { name: "Take away Nadia Wren as reader" }));
    expect(onAct).not.toHaveBeenCalled();
    fireEvent.click(screen.getByRole("button", { name: "Take away Nadia Wren as reader" }));
    expect(onAct).toHaveBeenCalledExactlyOnceWith({ act: "remove", personId: nadia?.id, role: "reader" });
  });

  it("lay down their own part, and nobody else's, after a second press", () => {
    const onAct = show(["leave-project"], nadia?.id);
    expect(screen.getAllByRole("button").map(({ textContent }) => textContent)).toEqual(["Leave as reader"]);
    fireEvent.click(screen.getByRole("button", { name: "Leave as reader" }));
    expect(screen.queryByRole("button", { name: "Stay" })).not.toBeNull();
    fireEvent.click(screen.getByRole("button", { name: "Leave as reader" }));
    expect(onAct).toHaveBeenCalledExactlyOnceWith({ act: "leave", role: "reader" });
  });

  it("who are readers have the last day of their part set, to the end of that day", () => {
    const onAct = show(["set-expiry"]);
    fireEvent.change(screen.getByLabelText("Last day of Nadia Wren"), { target: { value: "2027-04-02" } });
    fireEvent.click(screen.getByRole("button", { name: "Let it end then" }));
    const expiresAt = new Date(2027, 3, 2, 23, 59, 59, 999).toISOString();
    expect(onAct).toHaveBeenCalledExactlyOnceWith({ act: "end", personId: nadia?.id, expiresAt });
  });
});

describe("the two tables", () => {
  it("say what each part may do and see, mark for mark as the service holds to it", () => {
    render(<MayTables />);
    const marks = (table: HTMLElement) =>
      within(table)
        .getAllByRole("row")
        .slice(1)
        .map((row) =>
          within(row)
            .getAllByRole("cell")
            .map((cell) => cell.querySelector("svg") !== null),
        );
    const [doing, seeing] = screen.getAllByRole("table");
    if (doing === undefined || seeing === undefined) throw new Error("there are no two tables");
    expect(marks(doing)).toEqual(acts.map((act) => roles.map((role) => mayDo[act].includes(role))));
    expect(marks(seeing)).toEqual(recordKinds.map((kind) => roles.map((role) => maySee[kind].includes(role))));
  });
});
