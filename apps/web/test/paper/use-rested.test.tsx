import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { useRested } from "../../src/paper/use-rested.ts";

const at = (xMm: number) => ({ xMm });
const [first, second, third] = [at(0), at(10), at(20)];

describe("useRested(value, inHand)", () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  const shown = (value: { xMm: number }, inHand: boolean) =>
    renderHook((given: [{ xMm: number }, boolean]) => useRested(...given), { initialProps: [value, inHand] });

  it("is the value itself while nothing is held", () => {
    const { result, rerender } = shown(first, false);
    rerender([second, false]);
    expect(result.current).toBe(second);
  });

  it("stays as it was while what is held moves on, and follows where the hand rests", () => {
    const { result, rerender } = shown(first, false);
    rerender([second, true]);
    expect(result.current).toBe(first);
    act(() => void vi.advanceTimersByTime(100));
    rerender([third, true]);
    act(() => void vi.advanceTimersByTime(100));
    expect(result.current).toBe(first);
    act(() => void vi.advanceTimersByTime(100));
    expect(result.current).toBe(third);
  });

  it("is what was dropped at once", () => {
    const { result, rerender } = shown(first, true);
    rerender([second, true]);
    rerender([second, false]);
    expect(result.current).toBe(second);
  });
});
