import type { Assessment } from "@cornerway/schema";

/** Why there are no calculations to read here, in plain words. */
export function NoCalculations({
  letter,
  result,
  owner,
}: {
  letter: string | null;
  result: Assessment | null;
  owner: boolean;
}) {
  return (
    <section className="calculations-none">
      <h2>{letter === null ? "Nothing was sent yet" : `Revision ${letter}`}</h2>
      {sentences(letter, result, owner).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}

function sentences(letter: string | null, result: Assessment | null, owner: boolean): string[] {
  if (letter === null) return ["Calculations stand here once the architect has sent a revision."];
  if (result === null) return ["It is not checked yet. Calculations stand here as soon as it is."];
  if (result.strengthRefused !== undefined)
    return [
      "Strength could not be judged: the place is not stated for the code that is adopted.",
      ...result.strengthRefused,
    ];
  if (result.strength === undefined)
    return ["It was checked before strength was judged: only how the load comes down is known."];
  if (owner)
    return [
      "The strength of every part was worked out. What does not work, and who acts, stands on sheet 5 in plain words.",
      "The calculations themselves are for the engineer and the permit reviewer.",
    ];
  return [];
}
