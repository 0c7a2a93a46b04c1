import type { Scheme } from "@cornerway/schema";

/** What the first steps look at to see whether one is done. */
export interface TourState {
  scheme: Scheme;
  noteChosen: boolean;
  canRedo: boolean;
  revision: string | null;
}

export interface TourStep {
  heading: string;
  /** What to do, with its keys. */
  sentence: string;
  isDone: (now: TourState, begun: TourState) => boolean;
}

/** The way from an empty sheet to a revision, each step done by hand on the drawing. */
export const tourSteps: readonly TourStep[] = [
  {
    heading: "Set the first container",
    sentence: "Take Stack from the tray, or press S. Press where it is to stand, or Enter.",
    isDone: ({ scheme }) => scheme.containers.length > 0,
  },
  {
    heading: "Stack another on it",
    sentence: "Press S again and hold it over the first: it catches on the corners. Press, or the arrows and Enter.",
    isDone: ({ scheme }) => new Set(scheme.containers.map(({ zUm }) => zUm)).size > 1,
  },
  {
    heading: "Shift the upper one",
    sentence: "Drag it along, or choose it with the full stop and press Shift and an arrow a few times.",
    isDone: ({ scheme }, begun) => shifted(begun.scheme, scheme),
  },
  {
    heading: "Read the mark",
    sentence: "The load left the corners, and the notes say what that takes. Press a number in the margin, or N.",
    isDone: ({ noteChosen }) => noteChosen,
  },
  {
    heading: "Take the move back",
    sentence: "Ctrl Z goes back by moves, Ctrl Shift Z forward. Nothing you draw is lost.",
    isDone: ({ canRedo }) => canRedo,
  },
  {
    heading: "Send it",
    sentence: "Below, send revision A to the engineer once it is drawn as you want it. Draw on first, if you like.",
    isDone: ({ revision }) => revision !== null,
  },
];

/** True when a unit stands elsewhere in plan than when the step began. */
const shifted = (before: Scheme, after: Scheme): boolean =>
  after.containers.some((unit) => {
    const was = before.containers.find(({ id }) => id === unit.id);
    return was !== undefined && (was.xUm !== unit.xUm || was.yUm !== unit.yUm);
  });
