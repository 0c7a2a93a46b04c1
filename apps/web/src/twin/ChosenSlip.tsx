import type { Container, Operation, Scheme } from "@cornerway/schema";
import { lazy, Suspense, useContext, useMemo } from "react";
import { Command } from "../controls/Command.tsx";
import { Ruled } from "../controls/Ruled.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { listOfElement } from "../tools/element-operations.ts";
import { moveUnit, retypeUnit } from "../tools/move-unit.ts";
import { turnUnit } from "../tools/turn-unit.ts";
import { containerName } from "../wording/container-name.ts";
import { kindOf } from "../wording/kind-of.ts";
import { namesIn } from "../wording/name-of.ts";
import { Adding } from "./adding/Adding.tsx";
import { isPartList } from "./chosen/part-list.ts";
import { QuantityForm } from "./QuantityForm.tsx";
import { SizeField } from "./SizeField.tsx";
import { Typing } from "./typing.ts";
import { unitForm } from "./unit-form.ts";

const ChosenPart = lazy(() => import("./chosen/ChosenPart.tsx"));
const Alignments = lazy(() => import("./chosen/Alignments.tsx"));

export interface ChosenSlipProps {
  scheme: Scheme;
  id: string;
  asleepBecause?: string | undefined;
  onDraw: (operations: Operation[]) => void;
  onRemove: () => void;
  onBeamByHand: () => void;
}

/** The chosen thing in numbers: every drag has its typed twin here, and what can be added to it. */
export function ChosenSlip({ scheme, id, asleepBecause, onDraw, onRemove, onBeamByHand }: ChosenSlipProps) {
  const list = listOfElement(scheme, id);
  if (!isPartList(list)) return null;
  const name = namesIn(scheme)(id);
  const unit = scheme.containers.find((container) => container.id === id);
  return (
    <Slip label={whatItIs(scheme, id)}>
      {unit === undefined ? (
        <Suspense fallback={<Ruled label="Laying the slip out" lines={3} />}>
          <ChosenPart scheme={scheme} list={list} id={id} name={name} asleepBecause={asleepBecause} onDraw={onDraw} />
        </Suspense>
      ) : (
        <ChosenUnit scheme={scheme} unit={unit} asleepBecause={asleepBecause} onDraw={onDraw} />
      )}
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
        <Command quiet shortcut="Del" asleepBecause={asleepBecause} onPress={onRemove}>
          {`Take ${name} away`}
        </Command>
      </div>
      {asleepBecause === undefined ? (
        <Adding key={id} scheme={scheme} ids={[id]} onDraw={onDraw} onBeamByHand={onBeamByHand} />
      ) : null}
    </Slip>
  );
}

type ChosenUnitProps = Pick<ChosenSlipProps, "scheme" | "asleepBecause" | "onDraw"> & { unit: Container };

function ChosenUnit({ scheme, unit, asleepBecause, onDraw }: ChosenUnitProps) {
  const twin = useMemo(() => unitForm(scheme, unit), [scheme, unit]);
  const typing = useContext(Typing);
  return (
    <>
      <QuantityForm
        key={unit.id}
        fields={twin.fields}
        command={`Draw ${unit.tag} so`}
        asleepBecause={asleepBecause}
        onValues={(values) => onDraw(twin.operations(values))}
        onTyping={(values) => typing(values === null ? null : twin.operations(values))}
      >
        {asleepBecause === undefined ? (
          <SizeField type={unit.type} onChange={(type) => onDraw(retypeUnit(scheme, unit, type))} />
        ) : null}
      </QuantityForm>
      {asleepBecause === undefined ? (
        <Suspense fallback={null}>
          <Alignments scheme={scheme} unit={unit} onDraw={onDraw} />
          <ChosenPart scheme={scheme} list="containers" id={unit.id} name={unit.tag} onDraw={onDraw} />
        </Suspense>
      ) : null}
    </>
  );
}

/** "G1 · 40 ft high cube", "W1 · window in G1", "S1 · seat under T1 on F2". */
function whatItIs(scheme: Scheme, id: string): string {
  const nameOf = namesIn(scheme);
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined) return `${unit.tag} · ${containerName[unit.type]}`;
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (opening !== undefined) return `${opening.tag} · ${opening.use} in ${nameOf(opening.containerId)}`;
  const seat = scheme.seats.find((each) => each.id === id);
  if (seat !== undefined) return `${seat.tag} · seat under ${nameOf(seat.upperId)} on ${nameOf(seat.lowerId)}`;
  const tie = scheme.ties.find((each) => each.id === id);
  if (tie !== undefined) return `${tie.tag} · tie between ${nameOf(tie.aId)} and ${nameOf(tie.bId)}`;
  const lock = scheme.locks.find((each) => each.id === id);
  if (lock !== undefined) return `${lock.tag} · ${lock.kind} under ${nameOf(lock.containerId)}`;
  const load = scheme.freeLoads.find((each) => each.id === id);
  if (load !== undefined) return `${load.tag} · ${load.note} on ${nameOf(load.containerId)}`;
  const steel = [...scheme.posts, ...scheme.beams].find((each) => each.id === id);
  if (steel !== undefined) return `${steel.tag} · ${steel.section}`;
  return `${nameOf(id)} · ${kindOf(scheme, id, nameOf).split(" ")[0] ?? ""}`;
}
