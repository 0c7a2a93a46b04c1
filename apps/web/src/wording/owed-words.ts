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
    case "container to judge":
      return `a word on container ${number} of the survey`;
    case "container to repair":
      return `the repair of container ${number} of the survey`;
    case "survey to draw":
      return `a revision with what was measured of container ${number}`;
    case "site item to build":
      return `what word ${number} from the site says is not as drawn`;
    case "difference to judge":
      return `a word on the difference that word ${number} from the site states`;
    case "change":
      return `an answer to change request ${number}`;
    case "price to agree":
      return `a word on the price of change request ${number}, which was taken in`;
  }
}

/** "you" for a role one holds, "the architect" otherwise. */
export const sideOf = (role: Role, mine: readonly Role[]): string => (mine.includes(role) ? "you" : `the ${role}`);
