import { useNavigate } from "@tanstack/react-router";
import { useRoom } from "./room-context.ts";
import { useKeys } from "../keys/use-keys.ts";
import type { Keys } from "../keys/use-keys.ts";

/** Keys every sheet of a project has: 1–7 turn to a sheet, F6 steps between regions; `own` come on top. */
export function useSheetKeys(own: Keys): void {
  const { project } = useRoom();
  const navigate = useNavigate();
  const turns = Object.fromEntries(
    ["1", "2", "3", "4", "5", "6", "7"].map((sheet) => [
      sheet,
      () => void navigate({ to: "/projects/$projectId/sheet/$sheet", params: { projectId: project.id, sheet } }),
    ]),
  );
  useKeys({ ...turns, F6: () => stepRegion(1), "Shift+F6": () => stepRegion(-1), ...own });
}

const focusable = "button:enabled, a[href], summary, input:enabled, textarea:enabled, select:enabled, [tabindex='0']";

/** Moves the focus to the first thing of the next region that has one. */
function stepRegion(by: 1 | -1): void {
  const regions = [...document.querySelectorAll<HTMLElement>("[data-region]")].filter(
    (region) => region.querySelector(focusable) !== null,
  );
  const now = regions.findIndex((region) => region.contains(document.activeElement));
  const next = regions.at(now === -1 ? 0 : (now + by + regions.length) % regions.length);
  next?.querySelector<HTMLElement>(focusable)?.focus();
}
