import { act, renderHook, waitFor } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { useForces, type Asking } from "../../src/forces/use-forces.ts";
import { judgedProof, judgedScheme } from "../support/judged-unit.ts";

const { report } = judgedProof;
const governing = report.results.find(({ utilisation }) => utilisation !== null)?.run ?? "";

function asked(runs: readonly string[]) {
  const forcesOf = vi.fn<Asking["forcesOf"]>((_, wanted) => {
    const run = wanted.find((each) => runs.includes(each)) ?? runs[0] ?? "";
    return Promise.resolve({ run, runs, forces: null });
  });
  return forcesOf;
}

describe("forces of the scheme shown", () => {
  it("are asked for once it is judged, of the run that governs most, which stands first", async () => {
    const forcesOf = asked(["another", governing]);
    const { result, rerender } = renderHook(({ judged }) => useForces(judgedScheme, judged, { forcesOf }), {
      initialProps: { judged: null as typeof report | null },
    });
    expect(forcesOf).not.toHaveBeenCalled();
    rerender({ judged: report });
    await waitFor(() => expect(result.current.stand).toBe(true));
    expect(result.current.told?.run).toBe(governing);
    expect(result.current.told?.runs).toEqual([governing, "another"]);
  });

  it("do not stand while another run is solved, and stand with the governing one where the plan has lost the chosen", async () => {
    const forcesOf = asked(["another", governing]);
    const { result } = renderHook(() => useForces(judgedScheme, report, { forcesOf }));
    await waitFor(() => expect(result.current.stand).toBe(true));
    act(() => result.current.choose("another"));
    expect(result.current.stand).toBe(false);
    await waitFor(() => expect(result.current.stand).toBe(true));
    expect(result.current.told?.run).toBe("another");
    act(() => result.current.choose("gone"));
    await waitFor(() => expect(result.current.stand).toBe(true));
    expect(result.current.told?.run).toBe(governing);
  });
});
