import { isProblem, NoAnswer, UnreadAnswer } from "../data/http.ts";
import { CautionLine } from "./CautionLine.tsx";
import { Command } from "./Command.tsx";
import { EmptyGround } from "./EmptyGround.tsx";
import "./trouble.css";

/** Something went wrong where a sheet should be: what happened, what is safe, the way out. */
export function Trouble({ error, again }: { error: unknown; again?: () => void }) {
  const { heading, sentences, retry } = troubleWords(error);
  const onRetry = error instanceof UnreadAnswer || isPartMissing(error) ? () => location.reload() : again;
  return (
    <main className="trouble">
      <EmptyGround />
      <section className="trouble-slip" role="alert">
        <h1>{heading}</h1>
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <div className="twin-row">
          {onRetry === undefined || retry === null ? null : (
            <Command next onPress={onRetry}>
              {retry}
            </Command>
          )}
          <a className="command" href="/">
            To the desk
          </a>
        </div>
      </section>
      <CautionLine />
    </main>
  );
}

interface TroubleWords {
  heading: string;
  sentences: string[];
  /** What trying again is called; null where it would not help. */
  retry: string | null;
}

const said = (error: unknown): string => (error instanceof Error ? error.message : "Something broke on this page.");

/** A part of the page that is fetched on demand did not come; each browser says so in its own words. */
const isPartMissing = (error: unknown): boolean =>
  error instanceof TypeError && /dynamically imported module|importing a module script failed/i.test(error.message);

function troubleWords(error: unknown): TroubleWords {
  if (isPartMissing(error))
    return {
      heading: "A part of this page did not come",
      sentences: [
        "The line to the office is down, or the service was renewed since this page was fetched.",
        "What was sent before is safe in the record. Moves not sent yet stay in this browser.",
      ],
      retry: "Fetch the page anew",
    };
  if (error instanceof NoAnswer)
    return {
      heading: "The line to the office is down",
      sentences: [
        "What was sent before is safe in the record. Moves drawn on this page are kept in this browser and sent when the line is back.",
      ],
      retry: "Try the line now",
    };
  if (error instanceof UnreadAnswer)
    return {
      heading: "This page is of another day than the service",
      sentences: [
        "The service was renewed since this page was fetched, and says things the page cannot read.",
        "What was sent before is safe in the record. Moves not sent yet stay in this browser.",
      ],
      retry: "Fetch the page anew",
    };
  if (isProblem(error, "not-found"))
    return {
      heading: "There is no sheet at this address",
      sentences: ["It was moved, or it is not yours to see. Whoever runs the project can ask you in."],
      retry: null,
    };
  if (isProblem(error, "role-refused") || isProblem(error, "not-confirmed"))
    return { heading: "This is not yours to see", sentences: [said(error)], retry: null };
  if (isProblem(error, "unready") || isProblem(error, "too-many-tries"))
    return { heading: "The office has no hand free", sentences: [said(error)], retry: "Ask again" };
  return {
    heading: "This sheet cannot be shown",
    sentences: [said(error), "What was sent before is safe in the record."],
    retry: "Fetch the sheet again",
  };
}
