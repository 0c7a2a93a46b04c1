import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { useKeys } from "../../src/keys/use-keys.ts";

afterEach(cleanup);

function Field({ keys }: { keys: Record<string, () => void> }) {
  useKeys(keys);
  return <input aria-label="Width" />;
}

it("in a field F6 still steps to the next region, and letters are typed", () => {
  const [step, stack] = [vi.fn<() => void>(), vi.fn<() => void>()];
  render(<Field keys={{ F6: step, s: stack }} />);
  fireEvent.keyDown(screen.getByLabelText("Width"), { key: "F6" });
  fireEvent.keyDown(screen.getByLabelText("Width"), { key: "s" });
  expect(step).toHaveBeenCalledTimes(1);
  expect(stack).not.toHaveBeenCalled();
});
