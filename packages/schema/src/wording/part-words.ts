import type { FittingName } from "../part-names.ts";
import type { Face } from "../scheme.ts";

/** A face of a container in running text. */
export const faceWords: Readonly<Record<Face, string>> = {
  left: "the left side",
  right: "the right side",
  front: "the front end",
  door: "the door end",
  roof: "the roof",
  floor: "the floor",
};

/** A corner of a container in running text. */
export const cornerWords: Readonly<Record<FittingName, string>> = {
  "front-right": "the front right corner",
  "front-left": "the front left corner",
  "door-right": "the right corner at the doors",
  "door-left": "the left corner at the doors",
  "front-right-inner": "the front right inner fitting",
  "front-left-inner": "the front left inner fitting",
  "door-right-inner": "the right inner fitting at the doors",
  "door-left-inner": "the left inner fitting at the doors",
};
