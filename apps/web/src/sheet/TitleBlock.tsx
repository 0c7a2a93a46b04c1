import { Triangle } from "../look/Triangle.tsx";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../look/verdict-class.ts";
import { CautionButton } from "./CautionButton.tsx";
import type { TitleBlockProps } from "./contract.ts";
import { sheets } from "./contract.ts";
import "./title-block.css";

/** Bottom right of every sheet: whose it is, what it shows, how it stands, and the row of seven, the only navigation. */
export function TitleBlock(props: TitleBlockProps) {
  const { projectName, subtitle, sheet, scale, date, revision, verdict, remark, onProject } = props;
  return (
    <div className="title-block">
      <div className="title-project">
        {onProject === undefined ? (
          <p>{projectName}</p>
        ) : (
          <button type="button" onClick={onProject} title="To the desk">
            {projectName}
          </button>
        )}
        <span className="caption">{subtitle}</span>
      </div>
      <dl className="title-cells">
        <Cell name="Sheet">{sheets.find(({ number }) => number === sheet)?.name}</Cell>
        <Cell name="Scale">{scale}</Cell>
        <Cell name="Date">{date}</Cell>
        <Cell name="Rev">{revision === null ? "draft" : <Triangle letter={revision} current sizePx={17} />}</Cell>
      </dl>
      <p className="title-number" aria-hidden="true">
        {sheet}
      </p>
      <p className={`title-verdict ${verdictClass(verdict)}`}>
        <VerdictSymbol verdict={verdict} />
        <span>{props.verdictLine ?? verdictWords(verdict)}</span>
        {remark !== undefined && <small>{remark}</small>}
      </p>
      <CautionButton />
      <SheetRow {...props} />
    </div>
  );
}

const Cell = ({ name, children }: { name: string; children: React.ReactNode }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

function SheetRow({ sheet, onSheet, asleepSheets }: TitleBlockProps) {
  return (
    <nav className="title-sheets" aria-label="Sheets">
      {sheets.map(({ number, name }) => {
        const why = asleepSheets?.get(number);
        return (
          <button
            type="button"
            key={number}
            aria-current={number === sheet ? "page" : undefined}
            aria-disabled={why !== undefined || undefined}
            title={why}
            onClick={() => {
              if (why === undefined && number !== sheet) onSheet(number);
            }}
          >
            <b>{number}</b>
            {name}
            {why !== undefined && <span className="unseen">, {why}</span>}
          </button>
        );
      })}
    </nav>
  );
}
