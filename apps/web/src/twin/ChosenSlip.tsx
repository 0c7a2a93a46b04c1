import { openingUses } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { Command } from "../controls/Command.tsx";
import { PersonField } from "../controls/PersonField.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { moveUnit, retypeUnit } from "../tools/move-unit.ts";
import { removeElements } from "../tools/remove-elements.ts";
import { turnUnit } from "../tools/turn-unit.ts";
import { containerName } from "../wording/container-name.ts";
import { namesIn } from "../wording/name-of.ts";
import { elementFields } from "./element-fields.ts";
import { QuantityForm } from "./QuantityForm.tsx";
import { SizeField } from "./SizeField.tsx";

export interface ChosenSlipProps {
  scheme: Scheme;
  id: string;
  asleepBecause?: string | undefined;
  onDraw: (operations: Operation[]) => void;
}

/** The chosen thing in numbers: every drag has its typed twin here. */
export function ChosenSlip({ scheme, id, asleepBecause, onDraw }: ChosenSlipProps) {
  const twin = useMemo(() => elementFields(scheme, id), [scheme, id]);
  if (twin === null) return null;
  const name = namesIn(scheme)(id);
  const unit = scheme.containers.find((container) => container.id === id);
  return (
    <Slip label={whatItIs(scheme, id)}>
      <QuantityForm
        key={id}
        fields={twin.fields}
        command={`Draw ${name} so`}
        asleepBecause={asleepBecause}
        onValues={(values) => onDraw(twin.operations(values))}
      >
        {asleepBecause === undefined ? <Choices scheme={scheme} id={id} onDraw={onDraw} /> : null}
      </QuantityForm>
      <div className="twin-row">
        {unit === undefined ? null : (
          <Command
            quiet
            shortcut="T"
            asleepBecause={asleepBecause}
            onPress={() => onDraw(moveUnit(scheme, turnUnit(unit, 90_000)))}
          >
            Turn by 90°
          </Command>
        )}
        <Command
          quiet
          shortcut="Del"
          asleepBecause={asleepBecause}
          onPress={() => onDraw(removeElements(scheme, [id]))}
        >
          {`Take ${name} away`}
        </Command>
      </div>
    </Slip>
  );
}

/** "G1 · 40 ft high cube", "W1 · window in G1". */
function whatItIs(scheme: Scheme, id: string): string {
  const nameOf = namesIn(scheme);
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined) return `${unit.tag} · ${containerName[unit.type]}`;
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (opening !== undefined) return `${opening.tag} · ${opening.use} in ${nameOf(opening.containerId)}`;
  const post = scheme.posts.find((standing) => standing.id === id);
  return post === undefined ? `${nameOf(id)} · pad` : `${post.tag} · ${post.section}`;
}

function Choices({ scheme, id, onDraw }: Pick<ChosenSlipProps, "scheme" | "id" | "onDraw">) {
  const unit = scheme.containers.find((container) => container.id === id);
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (unit !== undefined)
    return <SizeField type={unit.type} onChange={(type) => onDraw(retypeUnit(scheme, unit, type))} />;
  if (opening === undefined) return null;
  const { use, framed } = opening;
  return (
    <div className="twin-choices">
      <PersonField label="Use">
        {(bound) => (
          <select
            {...bound}
            value={use}
            onChange={({ target }) => {
              const next = openingUses.find((known) => known === target.value);
              if (next !== undefined) onDraw([{ kind: "opening.dress", id, use: next, framed }]);
            }}
          >
            {openingUses.map((known) => (
              <option key={known}>{known}</option>
            ))}
          </select>
        )}
      </PersonField>
      <PersonField label="Frame">
        {(bound) => (
          <select
            {...bound}
            value={framed ? "framed" : "bare"}
            onChange={({ target }) => onDraw([{ kind: "opening.dress", id, use, framed: target.value === "framed" }])}
          >
            <option>framed</option>
            <option>bare</option>
          </select>
        )}
      </PersonField>
    </div>
  );
}
