import { NoAnswer } from "../data/http.ts";
import { CautionLine } from "./CautionLine.tsx";
import { Command } from "./Command.tsx";
import "./trouble.css";

/** Something went wrong where a sheet should be: what happened, what is safe, the way out. */
export function Trouble({ error, again }: { error: unknown; again?: () => void }) {
  const cutOff = error instanceof NoAnswer;
  return (
    <main className="trouble">
      <section className="trouble-slip" role="alert">
        <h1>{cutOff ? "The line to the office is down" : "This sheet cannot be shown"}</h1>
        <p>{error instanceof Error ? error.message : "Something broke on this page."}</p>
        <p>What was sent before is safe in the record.</p>
        {again === undefined ? null : (
          <Command next onPress={again}>
            {cutOff ? "Try the line now" : "Fetch the sheet again"}
          </Command>
        )}
      </section>
      <CautionLine />
    </main>
  );
}
