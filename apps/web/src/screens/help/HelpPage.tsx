import { cautions, verdicts, type Verdict } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { hatchFill } from "../../look/hatch.ts";
import { verdictInk } from "../../look/ink.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { everyKey } from "../../room/every-key.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { UnitsField } from "../../units/UnitsField.tsx";
import { words } from "./words.ts";
import "./help.css";

/** What the sheets mean: verdicts, cautions, words, numbers, keys. */
export const HelpPage = () => (
  <PageSheet
    title="Words and marks"
    heading="How to read the sheets"
    way={
      <>
        <Link className="command command-quiet" to="/verification">
          What is verified
        </Link>
        <Link className="command" to="/">
          To the desk
        </Link>
      </>
    }
  >
    <p className="help-lead">
      The architect moves containers; the engine pencils at once what each move does to the load; the engineer writes on
      the drawing and answers. What the engine says is screening, until an engineer has answered it.
    </p>
    <div className="page-columns">
      <section>
        <h2 className="caption">Five verdicts</h2>
        <ul className="help-verdicts">
          {verdicts.toReversed().map((verdict) => (
            <VerdictRow key={verdict} verdict={verdict} />
          ))}
        </ul>
      </section>
      <section>
        <h2 className="caption">The cautions, with every result</h2>
        <ol className="help-list">
          {cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ol>
      </section>
      <section>
        <h2 className="caption">The stroke</h2>
        <p>
          Load is drawn as a stroke whose width is a force, on the scale in the key. In a corner post it runs straight
          down and widens as load joins it. A long break across it says that the path leaves the corners there.
        </p>
      </section>
      <section>
        <h2 className="caption">Numbers</h2>
        <UnitsField />
        <ul className="help-list">
          <li>
            Lengths are typed in either units, whatever is chosen: <b>5′-3 1/2″</b>, <b>5 ft 3.5 in</b>, <b>63.5″</b>,{" "}
            <b>1613</b>, <b>1,613 mm</b>, <b>1,6 m</b>.
          </li>
          <li>
            A number without a unit is metres, or feet where feet are read. From 100 up it is millimetres: no part of a
            scheme lies a hundred metres off.
          </li>
          <li>
            One comma or point alone is the decimal mark. A comma before exactly three figures stands before a group
            only where the unit is so small that nobody writes thousandths of it: mm, N, Pa, kg, lb, psf.
          </li>
          <li>With both, the last is the decimal mark: 1.613,5 mm and 1,613.5 mm are the same length.</li>
        </ul>
      </section>
    </div>
    <section>
      <h2 className="caption">Words</h2>
      <dl className="help-words">
        {words.map(([word, meaning]) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </section>
    <section>
      <h2 className="caption">Keys</h2>
      <dl className="help-words help-keys">
        {everyKey.map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  </PageSheet>
);

const meanings: Record<Verdict, string> = {
  "works as built": "The corners and posts carry it as the container came.",
  "works with steel": "It stands once the steel listed is in.",
  "needs the engineer": "No rule here covers it. A person must say.",
  "does not work": "The path stops. Nothing carries this load.",
  "not checked":
    "The engine has not answered: the drawing moved, strength waits, or wind, snow and earthquake of the place are not entered.",
};

function VerdictRow({ verdict }: { verdict: Verdict }) {
  return (
    <li>
      <VerdictSymbol verdict={verdict} sizePx={26} />
      <svg width="72" height="30" aria-hidden="true">
        <rect
          x="1"
          y="1"
          width="70"
          height="28"
          fill={verdict === "not checked" ? "none" : hatchFill(verdict, "normal")}
          stroke={verdictInk[verdict]}
          strokeDasharray={verdict === "not checked" ? "3 2" : undefined}
        />
      </svg>
      <div>
        <h3 className={verdictClass(verdict)}>{verdictWords(verdict)}</h3>
        <p>{meanings[verdict]}</p>
      </div>
    </li>
  );
}
