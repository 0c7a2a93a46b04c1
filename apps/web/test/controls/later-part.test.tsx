import { act, cleanup, render } from "@testing-library/react";
import { Component, type ReactNode } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { laterPart } from "../../src/controls/later-part.ts";

afterEach(cleanup);

class Boundary extends Component<{ children: ReactNode }, { why: string | null }> {
  override state = { why: null };
  static getDerivedStateFromError = (error: Error) => ({ why: error.message });
  override render = () => this.state.why ?? this.props.children;
}

const settle = () => act(async () => undefined);

describe("laterPart(fetchPart)", () => {
  it("gives null first, the part once it is there, and fetches it once for all who use it", async () => {
    let fetched = 0;
    const usePart = laterPart(async () => ({ word: `part ${(fetched += 1)}` }));
    const Shown = () => <p>{usePart()?.word ?? "nothing yet"}</p>;
    const both = (
      <>
        <Shown />
        <Shown />
      </>
    );
    const { container, unmount } = render(both);
    expect(container.textContent).toBe("nothing yetnothing yet");
    await settle();
    expect(container.textContent).toBe("part 1part 1");
    unmount();
    expect(render(both).container.textContent).toBe("part 1part 1");
  });

  it("throws where it cannot be fetched, and asks again for whoever comes next", async () => {
    const answers = [Promise.reject(new Error("no line")), Promise.resolve({ word: "here" })];
    const usePart = laterPart(() => answers.shift() ?? Promise.reject(new Error("asked too often")));
    const Shown = () => <p>{usePart()?.word ?? "nothing yet"}</p>;
    const first = render(
      <Boundary>
        <Shown />
      </Boundary>,
    );
    await settle();
    expect(first.container.textContent).toBe("no line");
    const second = render(
      <Boundary>
        <Shown />
      </Boundary>,
    );
    await settle();
    expect(second.container.textContent).toBe("here");
  });
});
