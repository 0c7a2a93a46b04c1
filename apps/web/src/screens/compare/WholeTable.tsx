import type { Pair } from "@cornerway/schema";
import type { WholeFigure } from "./whole-figures.ts";

/** Figures of the whole building, the two revisions beside each other. */
export const WholeTable = ({ letters, whole }: { letters: Pair<string>; whole: readonly WholeFigure[] }) => (
  <table className="whole-figures">
    <caption className="unseen">The whole building in both revisions</caption>
    <thead>
      <tr>
        <th scope="col">
          <span className="unseen">Figure</span>
        </th>
        <th scope="col">{letters.before}</th>
        <th scope="col">{letters.after}</th>
        <th scope="col">by</th>
      </tr>
    </thead>
    <tbody>
      {whole.map(({ name, before, after, by }) => (
        <tr key={name}>
          <th scope="row">{name}</th>
          <td>{before ?? "not known"}</td>
          <td>
            <b>{after ?? "not known"}</b>
          </td>
          <td>{by ?? "not known"}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
