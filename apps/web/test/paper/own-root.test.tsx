import { Component, lazy, Suspense, type ReactNode } from "react";
import { createRoot, type Root } from "react-dom/client";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { OwnRoot } from "../../src/paper/OwnRoot.tsx";

class Boundary extends Component<{ children: ReactNode }, { why: string | null }> {
  override state = { why: null };
  static getDerivedStateFromError = (error: Error) => ({ why: error.message });
  override render = () => this.state.why ?? this.props.children;
}

/** React's `act` gathers what no boundary of a root has caught, so that the root is not told: drawn here as the program draws. */
describe("<OwnRoot>", () => {
  let root: Root;
  let container: HTMLElement;
  beforeEach(() => {
    vi.spyOn(console, "error").mockReturnValue(); // React says there what a boundary has caught
    container = document.createElement("main");
    root = createRoot(container);
  });
  afterEach(() => {
    root.unmount();
    vi.restoreAllMocks();
  });
  const draw = (children: ReactNode) =>
    root.render(
      <Boundary>
        <svg>
          <OwnRoot>{children}</OwnRoot>
        </svg>
      </Boundary>,
    );
  const words = () => container.textContent;

  it("draws what it is given", async () => {
    draw(<text>4.5 m</text>);
    await expect.poll(words).toBe("4.5 m");
  });

  it("tells the boundary around it of a part that cannot be fetched", async () => {
    const Rejects = lazy((): Promise<{ default: () => ReactNode }> => Promise.reject(new Error("no line")));
    draw(
      <Suspense fallback={null}>
        <Rejects />
      </Suspense>,
    );
    await expect.poll(words).toBe("no line");
  });

  it("tells the boundary around it of what throws while it is drawn", async () => {
    const Throws = (): ReactNode => {
      throw new Error("no such side");
    };
    draw(<Throws />);
    await expect.poll(words).toBe("no such side");
  });
});
