import type { Project } from "@cornerway/schema";
import { nextLetter } from "../../wording/next-letter.ts";

export interface Standing {
  /** The end of the project's name: "is with the engineer." */
  heading: string;
  lead: string;
  /** What the engineer wrote on the stamp, in the engineer's words. */
  said?: string;
}

/** How the project stands. */
export function standing(project: Project, inTheWay: number): Standing {
  const { revision, stamp, waitsFor } = project;
  if (revision === null)
    return {
      heading: "is being drawn.",
      lead: "Nothing has been sent to the engineer yet. It appears here when it is.",
    };
  if (stamp?.disposition === "Rejected")
    return {
      heading: "was rejected.",
      lead: `${stamp.author.name} stamped revision ${revision}: Rejected.`,
      said: stamp.text,
    };
  if (stamp !== null)
    return {
      heading: "goes back to the architect.",
      lead: `${stamp.author.name} stamped revision ${revision}: ${stamp.disposition}.`,
      said: stamp.text,
    };
  const things =
    inTheWay === 1
      ? "One thing stands in the way; it is listed below with who acts on it."
      : `${inWords[inTheWay] ?? inTheWay} things stand in the way; they are listed below with who acts on each.`;
  return {
    heading: waitsFor === "engineer" ? "is with the engineer." : `is with the ${waitsFor ?? "engineer"}.`,
    lead: `It cannot be approved yet. ${things}`,
  };
}

export function nextStepWords({ revision, stamp, waitsFor, engineerToConfirm }: Project): {
  heading: string;
  sentence: string;
} {
  if (revision === null)
    return {
      heading: "The architect sends revision A.",
      sentence: "Then the engineer reads it and answers on the drawing.",
    };
  if (stamp?.disposition === "Rejected")
    return { heading: "The scheme stops here.", sentence: "The architect and you decide whether another is drawn." };
  if (stamp !== null || waitsFor === "architect")
    return {
      heading: `Revision ${nextLetter(revision)} comes from the architect.`,
      sentence: "It takes in what the engineer wrote, and then it is reviewed again.",
    };
  if (waitsFor === "owner" && engineerToConfirm)
    return {
      heading: "The owner says who the engineer is.",
      sentence: `Then the engineer reads revision ${revision} and answers on the drawing.`,
    };
  if (waitsFor === "owner")
    return {
      heading: "The owner says yes or no to the price.",
      sentence: "Then the architect takes what is asked into the drawing, or declines it.",
    };
  return {
    heading: `The engineer stamps revision ${revision}.`,
    sentence:
      "A stamp is a step between the parties. The seal on the permit set is another act, by a licensed engineer.",
  };
}

const inWords = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven"];
