import type { CostBook } from "@cornerway/schema";
import { faultOf } from "../../data/field-faults.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { figureLabel, figureUnit, printAmount, type FigureOf } from "./cost-figures.ts";
import { placeOf, type Edits } from "./written-book.ts";

export interface FigureTableProps {
  caption: string;
  figures: readonly FigureOf[];
  book: CostBook;
  edits: Edits;
  faults: ReadonlySet<string>;
  error: unknown;
  mayWrite: boolean;
  onEdit: (place: string, edit: { amount?: string; source?: string }) => void;
}

/** Figures of the book in rows: what, how much in the reader's units, from where; those without a source are for show. */
export function FigureTable(props: FigureTableProps) {
  const { caption, figures } = props;
  return (
    <section>
      <h2 className="caption">{caption}</h2>
      <PageScroll label={caption}>
        <table className="cost-table">
          <colgroup>
            <col className="what" />
            <col className="amount" />
            <col className="unit" />
            <col />
            <col className="stands" />
          </colgroup>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className="figure">
                Amount
              </th>
              <th scope="col">Unit</th>
              <th scope="col">Source</th>
              <th scope="col">Stands as</th>
            </tr>
          </thead>
          <tbody>
            {figures.map((figure) => (
              <FigureRow key={figure.name} figure={figure} {...props} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

function FigureRow({ figure, book, edits, faults, error, mayWrite, onEdit }: FigureTableProps & { figure: FigureOf }) {
  const units = useUnits();
  const { amount, source } = figure.group === "rates" ? book.rates[figure.name] : book.labour[figure.name];
  const place = placeOf(figure);
  const edit = edits.figures[place];
  const label = figureLabel(figure);
  const typed = { amount: edit?.amount ?? printAmount(figure, amount, units), source: edit?.source ?? source ?? "" };
  const fault = faults.has(place)
    ? "A number from nought up."
    : (faultOf(error, `${place}/amount`) ?? faultOf(error, `${place}/source`));
  return (
    <tr>
      <th scope="row">{label}</th>
      <td className="figure field">
        <input
          aria-label={`${label}, amount`}
          aria-invalid={fault !== undefined}
          inputMode="decimal"
          value={typed.amount}
          readOnly={!mayWrite}
          onChange={({ target }) => onEdit(place, { ...edit, amount: target.value })}
        />
        {fault === undefined ? null : (
          <p className="field-fault" role="alert">
            {fault}
          </p>
        )}
      </td>
      <td>{figureUnit(figure, book.currency, units)}</td>
      <td className="field">
        <input
          aria-label={`${label}, source`}
          value={typed.source}
          maxLength={200}
          readOnly={!mayWrite}
          placeholder="no source"
          onChange={({ target }) => onEdit(place, { ...edit, source: target.value })}
        />
      </td>
      <td>{typed.source.trim() === "" ? <b className="price-for-show">for show</b> : "given"}</td>
    </tr>
  );
}
