import type { Container, Operation, Scheme } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { padsFollow } from "./pads-follow.ts";

/** What a new floor carries until someone says otherwise: an office (ASCE 7-16 Table 4.3-1, from memory) and a fit-out. */
const usualLoads = [
  { case: "imposed", pressurePa: 2400 },
  { case: "finish", pressurePa: 1000 },
] as const;

/** Sets a unit with the loads of its floor and, on the ground, the pads under its corners. */
export const placeUnit = (scheme: Scheme, container: Container): Operation[] => [
  { kind: "container.place", container },
  ...usualLoads.map((load): Operation => ({
    kind: "load.put",
    load: { id: newElementId("l"), containerId: container.id, surface: "floor", ...load },
  })),
  ...padsFollow(scheme, null, container),
];
