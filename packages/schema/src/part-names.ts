import { z } from "zod";

/** The four corners every container has. */
export const fittingNames = ["front-right", "front-left", "door-right", "door-left"] as const;
/** The four fittings a 45 ft container also has, at the spacing of a 40 ft one. */
export const innerFittingNames = [
  "front-right-inner",
  "front-left-inner",
  "door-right-inner",
  "door-left-inner",
] as const;
export const FittingName = z.enum([...fittingNames, ...innerFittingNames]).meta({ id: "FittingName" });
export type FittingName = z.infer<typeof FittingName>;

/** A part of a container, named as in ISO 1496-1 and generic specifications. */
export const memberNames = [
  "corner post",
  "top side rail",
  "bottom side rail",
  "top end rail",
  "bottom end rail",
  "door header",
  "door sill",
  "cross member",
  "corner fitting",
] as const;
export const MemberName = z.enum(memberNames).meta({ id: "MemberName" });
export type MemberName = z.infer<typeof MemberName>;
