import type { OpenedLink, ReaderLink, UseLink } from "@cornerway/schema";
import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { ReaderForm } from "../../src/screens/invitation/ReaderForm.tsx";
import { ReaderLinkTable } from "../../src/screens/people/ReaderLinksSection.tsx";

afterEach(cleanup);

const link: ReaderLink = {
  id: "00000000-0000-4000-8000-000000000001",
  name: "Building office, counter 3",
  madeBy: "Olm Sorrel",
  madeAt: "2027-03-10T09:00:00.000Z",
  expiresAt: "2027-06-01T12:00:00.000Z",
  opened: 0,
  lastOpenedAt: null,
};

describe("the readers' links of a project", () => {
  it("tell for whom each is, who made it, until when, and how often it was opened", () => {
    const seen = {
      ...link,
      id: link.id.replace(/1$/, "2"),
      name: "Second desk",
      opened: 3,
      lastOpenedAt: "2027-03-12T09:00:00.000Z",
    };
    render(<ReaderLinkTable links={[link, seen]} onEnd={vi.fn<(id: string) => void>()} />);
    const cells = (name: RegExp) =>
      within(screen.getByRole("row", { name }))
        .getAllByRole("cell")
        .slice(0, 2)
        .map(({ textContent }) => textContent);
    expect(cells(/counter 3/)).toEqual(["Not yet", "1 Jun 2027"]);
    expect(cells(/Second desk/)).toEqual(["3 times, last on 12 Mar 2027", "1 Jun 2027"]);
    expect(screen.getAllByText("made by Olm Sorrel")).toHaveLength(2);
  });

  it("are withdrawn one by one", () => {
    const onEnd = vi.fn<(id: string) => void>();
    render(<ReaderLinkTable links={[link]} onEnd={onEnd} />);
    fireEvent.click(screen.getByRole("button", { name: "Withdraw the link of Building office, counter 3" }));
    expect(onEnd).toHaveBeenCalledExactlyOnceWith(link.id);
  });

  it("are missed in so many words where there are none", () => {
    render(<ReaderLinkTable links={[]} onEnd={vi.fn<(id: string) => void>()} />);
    expect(screen.queryByText("Nobody reads by a link.")).not.toBeNull();
  });
});

describe("the page of a reader's link", () => {
  const opened: Extract<OpenedLink, { kind: "reader-link" }> = {
    ...{ kind: "reader-link", projectName: "Lock Lane", name: link.name, madeBy: link.madeBy },
    ...{ expiresAt: link.expiresAt, signedInAs: null },
  };
  const show = (more: Partial<typeof opened> = {}) => {
    const send = vi.fn<(words: UseLink) => void>();
    render(<ReaderForm link={{ ...opened, ...more }} send={send} error={null} sending={false} />);
    return send;
  };

  it("says what it opens before it is opened, and opens it at one press", () => {
    const send = show();
    expect(screen.queryByText(/Nothing can be written by it/)).not.toBeNull();
    expect(screen.queryByText(/You are signed in here/)).toBeNull();
    fireEvent.click(screen.getByRole("button", { name: "Read Lock Lane" }));
    expect(send).toHaveBeenCalledExactlyOnceWith({ as: "reader" });
  });

  it("warns whoever is signed in as someone else that this ends", () => {
    show({ signedInAs: "Ebba Thorne" });
    expect(screen.queryByText("You are signed in here as Ebba Thorne. Reading by the link ends that.")).not.toBeNull();
  });
});
