import { Link } from "@tanstack/react-router";
import { useState } from "react";
import { PersonField } from "../../controls/PersonField.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useOpenOptionSet, useOptionSets } from "../../data/option-set.ts";
import type { Side } from "../../drawing/contract.ts";
import { sides } from "../../drawing/sides.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { newUuid } from "../../tools/new-uuid.ts";
import { FirstOptions } from "./FirstOptions.tsx";
import { NameForm } from "./NameForm.tsx";
import { OptionSetSection } from "./OptionSetSection.tsx";
import "../../prices/prices.css";
import "./options.css";

/** Up to six alternatives side by side, each with verdict, premium and steel; one is picked, the others stay. */
export function OptionsPage() {
  const { project } = useRoom();
  const sets = useOptionSets(project);
  const [side, turnTo] = useState<Side>("south");
  const hidden = whyNot(project, "read-prices");
  if (sets.isError) return <Trouble error={sets.error} again={() => void sets.refetch()} />;
  if (hidden === undefined && sets.isPending) return <Ruled label="Fetching the alternatives" />;
  const shown = sets.data ?? [];
  return (
    <PageSheet
      title={`${project.name}, alternatives`}
      caption={`${project.client} · ${project.place}`}
      heading={`${project.name}: alternatives`}
      way={
        <>
          <Link className="command command-quiet" to="/projects/$projectId/premium" params={{ projectId: project.id }}>
            Premium
          </Link>
          <Link className="command" to="/projects/$projectId" params={{ projectId: project.id }}>
            To the sheets
          </Link>
        </>
      }
    >
      {hidden === undefined ? null : <p>{hidden}</p>}
      {hidden === undefined && shown.length === 0 ? (
        <>
          <p>Nothing is to be chosen between yet.</p>
          <FirstOptions />
        </>
      ) : null}
      {shown.some(({ options }) => options.length > 0) ? <SideField side={side} onSide={turnTo} /> : null}
      {shown.map((set) => (
        <OptionSetSection key={set.id} set={set} side={side} />
      ))}
      {whyNot(project, "keep-options") === undefined ? <OpenSet projectId={project.id} /> : null}
    </PageSheet>
  );
}

function SideField({ side, onSide }: { side: Side; onSide: (side: Side) => void }) {
  return (
    <PersonField label="Seen from the">
      {(bound) => (
        <select
          {...bound}
          className="option-side"
          value={side}
          onChange={({ target }) => onSide(sides.find((each) => each === target.value) ?? side)}
        >
          {sides.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      )}
    </PersonField>
  );
}

function OpenSet({ projectId }: { projectId: string }) {
  const open = useOpenOptionSet(projectId);
  return (
    <NameForm
      label="What is to be chosen between"
      command="Open a set of alternatives"
      most={120}
      asleepBecause={open.isPending ? "It is on its way." : undefined}
      error={open.error}
      onName={(name, done) => open.mutate({ id: newUuid(), name }, { onSuccess: done })}
    />
  );
}
