import { isometricPlace, type EyePlace } from "@cornerway/engine";

const compass = ["east", "north-east", "north", "north-west", "west", "south-west", "south", "south-east"] as const;

/** The eighth of the compass one looks from. */
export const eyeCompass = ({ turnMdeg }: EyePlace): string =>
  compass[((Math.round(turnMdeg / 45_000) % 8) + 8) % 8] ?? "east";

export const isIsometric = ({ turnMdeg, tiltMdeg }: EyePlace): boolean =>
  tiltMdeg === isometricPlace.tiltMdeg && turnMdeg === isometricPlace.turnMdeg;

/** What to know before reading the picture: "isometric · not to scale"; "seen 50° down · not to scale". */
export const eyeRemark = (place: EyePlace): string =>
  `${isIsometric(place) ? "isometric" : `seen ${Math.round(place.tiltMdeg / 1000)}° down`} · not to scale`;
