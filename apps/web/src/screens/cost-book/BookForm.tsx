import { canonicalJson, type ProjectCostBook } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useChangeCostBook } from "../../data/cost-book.ts";
import { faultOf } from "../../data/field-faults.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useUnits } from "../../units/use-units.ts";
import { labourFigures, rateFigures } from "./cost-figures.ts";
import { FigureTable } from "./FigureTable.tsx";
import { noEdits, writtenBook } from "./written-book.ts";

/** The figures to read and, for whoever keeps the book, to write; what was typed stays until it is written or let go. */
export function BookForm({ costBook }: { costBook: ProjectCostBook }) {
  const { project, say } = useRoom();
  const units = useUnits();
  const change = useChangeCostBook(project.id);
  const [edits, setEdits] = useState(noEdits);
  // The book the typing began on: one that came in meanwhile is not written over unseen.
  const [begun, setBegun] = useState<ProjectCostBook | null>(null);
  const on = begun ?? costBook;
  const { book, faults } = writtenBook(on.book, edits, units);
  const changed = canonicalJson(book) !== canonicalJson(on.book);
  const edit = (next: typeof edits) => {
    setBegun(on);
    setEdits(next);
  };
  const letGo = () => {
    setBegun(null);
    setEdits(noEdits);
    change.reset();
  };
  const write = () =>
    change.mutate(
      { book, digest: on.digest },
      {
        onSuccess: () => {
          letGo();
          say("The cost book is written. It is in the record.");
        },
      },
    );
  const mine = whyNot(project, "keep-cost-book");
  const why = mine ?? whyNotYet(changed, faults.size, change.isPending);
  const table = { book, edits, faults, error: change.error, mayWrite: mine === undefined };
  const onEdit = (place: string, figure: { amount?: string; source?: string }) =>
    edit({ ...edits, figures: { ...edits.figures, [place]: figure } });
  return (
    <form
      className="cost-book"
      onSubmit={(event) => {
        event.preventDefault();
        if (why === undefined) write();
      }}
    >
      <PersonField label="Currency, by its three letters" fault={faultOf(change.error, "/currency")}>
        {(bound) => (
          <input
            {...bound}
            value={edits.currency ?? on.book.currency}
            maxLength={3}
            size={5}
            readOnly={mine !== undefined}
            onChange={({ target }) => edit({ ...edits, currency: target.value })}
          />
        )}
      </PersonField>
      <FigureTable caption="What is paid" figures={rateFigures} onEdit={onEdit} {...table} />
      <FigureTable caption="How long it takes" figures={labourFigures} onEdit={onEdit} {...table} />
      {begun !== null && begun.digest !== costBook.digest ? (
        <p role="status">
          Book {costBook.number} was written meanwhile. What you typed is kept here; let it go to see that book.
        </p>
      ) : null}
      <div className="price-answers">
        <Command next type="submit" onPress={() => undefined} asleepBecause={why}>
          Write it into the cost book
        </Command>
        {begun === null ? null : (
          <Command quiet onPress={letGo}>
            Let go of what is typed
          </Command>
        )}
      </div>
      {why === undefined || mine === undefined ? null : <p className="price-small">{mine}</p>}
      <Refused error={change.error} />
    </form>
  );
}

function whyNotYet(changed: boolean, faults: number, pending: boolean): string | undefined {
  if (pending) return "It is on its way.";
  if (faults > 0) return "Something typed is no amount.";
  return changed ? undefined : "Nothing is changed.";
}
