import type { JudgedPart, Mark } from "@cornerway/schema";
import type { LimitState } from "../../checks/limit-state.ts";
import { overParts } from "../over-parts.ts";
import type { Generator } from "../trial.ts";
import { longerSeats } from "./longer-seats.ts";
import { plainSeats, stiffenedSeats } from "./seats.ts";
import { stiffeners } from "./stiffeners.ts";

/**
 * Rails and sheets beyond their strength where one unit comes down on another off its corners: longer seats under the unit that
 * comes down there, and stiffeners where it is the web of its own rail that gives way.
 */
export const pressedRails: Generator = (ground) => {
  const pressed = overParts(ground.mark).filter(({ check }) => ofSeat.has(check));
  const inWeb = new Set(pressed.filter(({ check }) => ofWeb.has(check)).flatMap(comesDown));
  return [...new Set(pressed.flatMap(comesDown))].toSorted().flatMap((unitId) => {
    const mark: Mark = { ...ground.mark, elements: [unitId] };
    const ways = inWeb.has(unitId) ? [longerSeats, stiffeners, plainSeats, stiffenedSeats] : [longerSeats, plainSeats];
    return ways.flatMap((way) => way({ ...ground, mark }));
  });
};

const ofWeb: ReadonlySet<string> = new Set<LimitState>(["web crippling", "bending with web crippling"]);
const ofSeat: ReadonlySet<string> = new Set<LimitState>([
  "web crippling",
  "bending with web crippling",
  "local moment at a seat",
  "side wall yielding",
  "side wall crippling",
  "sheet crushing under a seat",
]);

/** The unit that comes down where a part is pressed, as its place names it: "at top rail left 1.50 m, f1 bottom rail left 0.90 m on it". */
const comesDown = ({ place }: JudgedPart): string[] =>
  /^at (?:top|bottom) rail .*, (\S+) .* on it$/.exec(place)?.slice(1, 2) ?? [];
