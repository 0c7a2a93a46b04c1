import type { DamageLimit, SurveyLimits, SurveyNow } from "@cornerway/schema";
import { useState } from "react";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useSetSurveyLimits } from "../../data/survey.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { newUuid } from "../../tools/new-uuid.ts";
import { readLengthUm } from "../../units/length.ts";
import { useUnits } from "../../units/use-units.ts";
import { gaugeLength } from "../../wording/millimetres.ts";
import { damageWords } from "../../wording/survey-words.ts";

/** What containers are held against, each limit with its source; the engineer sets them for the project. */
export function LimitsSection({ survey: { limits, setBy } }: { survey: SurveyNow }) {
  const { project } = useRoom();
  const units = useUnits();
  const { permille, source, certainty } = limits.leastThickness;
  return (
    <section aria-labelledby="survey-limits">
      <h2 className="caption" id="survey-limits">
        What containers are held against
      </h2>
      <p>
        {setBy === null
          ? "The usual limits: nobody has set others for this project. They are about fitness for transport, and passing them proves little for a building."
          : `Set for this project by ${setBy.author.name}, ${dayAndTimeOf(setBy.setAt)}.`}
      </p>
      <details>
        <summary>{limits.damage.length + 1} limits, each with its source</summary>
        <PageScroll label="Table of limits">
          <table>
            <ColumnHeads heads={["Part", "What", { figure: "Limit" }, "Source"]} />
            <tbody>
              {limits.damage.map((limit) => (
                <tr key={keyOf(limit)}>
                  <th scope="row">{limit.member}</th>
                  <td>{damageWords[limit.kind]}</td>
                  <td className="figure">{gaugeLength(limit.limitUm, units)}</td>
                  <td>{sourceWords(limit)}</td>
                </tr>
              ))}
              <tr>
                <th scope="row">every part</th>
                <td>least thickness</td>
                <td className="figure">{permille / 10} % of what is assumed</td>
                <td>{sourceWords({ source, certainty })}</td>
              </tr>
            </tbody>
          </table>
        </PageScroll>
      </details>
      {whyNot(project, "judge-container") === undefined ? <LimitForm limits={limits} /> : null}
    </section>
  );
}

const keyOf = ({ member, kind }: DamageLimit): string => `${member} ${kind}`;

const sourceWords = ({ source, certainty }: Pick<DamageLimit, "source" | "certainty">): string =>
  source.includes(certainty) ? source : `${source} (${certainty})`;

/** Sets one limit, with where it is from; all others stay. */
function LimitForm({ limits }: { limits: SurveyLimits }) {
  const { project, say } = useRoom();
  const units = useUnits();
  const set = useSetSurveyLimits(project.id);
  const [which, choose] = useState(() => limits.damage.map(keyOf)[0] ?? "");
  const [size, setSize] = useState("");
  const [source, setSource] = useState("");
  const read = readLengthUm(/^[\d.]+$/.test(size.trim()) ? `${size} mm` : size, units);
  const because =
    !read.ok || read.value < 1
      ? "Write the limit, such as 40 mm."
      : source.trim() === ""
        ? "Name its source."
        : undefined;
  const send = () => {
    if (!read.ok) return;
    const damage = limits.damage.map((limit) =>
      keyOf(limit) === which
        ? { ...limit, limitUm: read.value, source: source.trim(), certainty: "common practice" as const }
        : limit,
    );
    set.mutate({ id: newUuid(), limits: { ...limits, damage } }, { onSuccess: () => say("The limit is set.") });
  };
  return (
    <details>
      <summary>Set a limit for this project</summary>
      <div className="survey-form">
        <PersonField label="Which">
          {(bound) => (
            <select {...bound} value={which} onChange={({ target }) => choose(target.value)}>
              {limits.damage.map((limit) => (
                <option key={keyOf(limit)} value={keyOf(limit)}>
                  {limit.member}, {damageWords[limit.kind]}
                </option>
              ))}
            </select>
          )}
        </PersonField>
        <PersonField label="No more than">
          {(bound) => <input {...bound} maxLength={20} value={size} onChange={({ target }) => setSize(target.value)} />}
        </PersonField>
        <PersonField label="Where it is from">
          {(bound) => (
            <input {...bound} maxLength={300} value={source} onChange={({ target }) => setSource(target.value)} />
          )}
        </PersonField>
        <Command engineer onPress={send} asleepBecause={because}>
          Set this limit
        </Command>
        <Refused error={set.error} />
      </div>
    </details>
  );
}
