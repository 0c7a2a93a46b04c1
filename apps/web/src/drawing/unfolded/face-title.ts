import type { Face } from "@cornerway/schema";

export const faceTitle: Readonly<Record<Face, string>> = {
  left: "LEFT SIDE",
  right: "RIGHT SIDE",
  front: "FRONT END",
  door: "DOOR END",
  roof: "ROOF",
  floor: "FLOOR, FROM BELOW",
};
