import { listOf } from "./list-of.ts";

/** A way in plan and height, µm, as people say it: "0.85 m east", "0.10 m north and 2.90 m up"; "nowhere" for none. */
export function wayWords(by: { xUm: number; yUm: number; zUm: number }, long: (um: number) => string): string {
  const parts = [
    step(long, by.xUm, "east", "west"),
    step(long, by.yUm, "north", "south"),
    step(long, by.zUm, "up", "down"),
  ].filter((part) => part !== null);
  return parts.length === 0 ? "nowhere" : listOf(parts);
}

const step = (long: (um: number) => string, byUm: number, ahead: string, back: string): string | null =>
  byUm === 0 ? null : `${long(Math.abs(byUm))} ${byUm > 0 ? ahead : back}`;
