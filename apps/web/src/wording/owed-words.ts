import type { Owed, Role } from "@cornerway/schema";

/** What is owed, as a line says it: "the answer to question 3". */
export function owedThing({ what, number }: Pick<Owed, "what" | "number">): string {
  switch (what) {
    case "answer":
      return `the answer to question ${number}`;
    case "information":
      return `the information for question ${number}`;
    case "question to close":
      return `question ${number}, to read and close`;
    case "condition to close":
      return `condition ${number}, to look at and close`;
    case "condition":
      return `condition ${number}`;
    case "change":
      return `an answer to change request ${number}`;
  }
}

/** "you" for a role one holds, "the architect" otherwise. */
export const sideOf = (role: Role, mine: readonly Role[]): string => (mine.includes(role) ? "you" : `the ${role}`);
