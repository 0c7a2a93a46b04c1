import { useState } from "react";
import type { ReactNode } from "react";
import type { z } from "zod";
import { Command } from "../../controls/Command.tsx";
import { useUnits } from "../../units/use-units.ts";
import { faultsByField } from "./fault-words.ts";
import { PartFieldInput } from "./PartFieldInput.tsx";
import { printValue, readValue, type PartField } from "./part-field.ts";
import { valueAt, withValueAt } from "./path.ts";
import "../twin.css";
import "./part.css";

export interface PartFormProps<E extends object> {
  element: E;
  /** What the element must be; refuses with the place. */
  schema: z.ZodType<E>;
  fields: readonly PartField[];
  /** What pressing it puts on the drawing: "Draw S1 so". */
  command: string;
  onElement: (element: E) => void;
  /** Told the element as it stands typed, at each answer; null where it makes no sense or is drawn. */
  onTyping?: (element: E | null) => void;
  /** What one answer implies for others, before the element is held to its schema. */
  settle?: (element: object) => object;
  /** A choice is drawn as soon as it is made. */
  live?: boolean;
  /** Told of each answer as it is given, for fields that hang on another. */
  onAnswer?: (path: string, text: string) => void;
  asleepBecause?: string | undefined;
  children?: ReactNode;
}

/** An element by its properties, each typed or chosen; nothing is drawn until all of it makes sense. */
export function PartForm<E extends object>(props: PartFormProps<E>) {
  const { element, schema, fields, asleepBecause } = props;
  const units = useUnits();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [faults, setFaults] = useState<Readonly<Record<string, string>>>({});
  const shown = (field: PartField) => typed[field.path] ?? printValue(field, valueAt(element, field.path), units);

  const read = (answers: Readonly<Record<string, string>>) => {
    const { changed, unread } = readAll(element, fields, answers, (field, text) => readValue(field, text, units));
    const whole = schema.safeParse((props.settle ?? same)(changed));
    const wrong = { ...(whole.success ? {} : faultsByField(fields, whole.error.issues, units)), ...unread };
    return { wrong, whole: whole.success && Object.keys(unread).length === 0 ? whole.data : null };
  };
  const finish = (answers: Readonly<Record<string, string>>) => {
    if (asleepBecause !== undefined) return;
    const { wrong, whole } = read(answers);
    setFaults(wrong);
    if (whole === null) return;
    setTyped({});
    props.onTyping?.(null);
    props.onElement(whole);
  };
  const answer = (field: PartField, text: string) => {
    const answers = { ...typed, [field.path]: text };
    setTyped(answers);
    props.onAnswer?.(field.path, text);
    if (props.live === true && isChosen(field)) finish(answers);
    else props.onTyping?.(read(answers).whole);
  };

  return (
    <form
      className="twin"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        finish(typed);
      }}
    >
      {groupsOf(fields).map(([group, inGroup]) => (
        <FieldGroup key={group} heading={group}>
          {inGroup.map((field) => (
            <PartFieldInput
              key={field.path}
              field={field}
              text={shown(field)}
              fault={faults[field.path]}
              readOnly={asleepBecause !== undefined}
              onText={(text) => answer(field, text)}
            />
          ))}
        </FieldGroup>
      ))}
      {faults[""] === undefined ? null : (
        <p className="field-fault" role="alert">
          {faults[""]}
        </p>
      )}
      {props.children}
      <Command type="submit" onPress={() => undefined} asleepBecause={asleepBecause}>
        {props.command}
      </Command>
    </form>
  );
}

/** Chosen from a list, not typed. */
const isChosen = ({ as }: PartField): boolean => as === "choice" || as === "section" || as === "yes or no";

const same = (element: object) => element;

/** The element with every answer put in; a field nobody touched keeps its value to the last micrometre. */
function readAll(
  element: object,
  fields: readonly PartField[],
  answers: Readonly<Record<string, string>>,
  read: (field: PartField, text: string) => ReturnType<typeof readValue>,
) {
  let changed = element;
  const unread: Record<string, string> = {};
  for (const field of fields) {
    const text = answers[field.path];
    if (text === undefined) continue;
    const found = read(field, text);
    if (found.ok) changed = withValueAt(changed, field.path, found.value);
    else unread[field.path] = found.why;
  }
  return { changed, unread };
}

function groupsOf(fields: readonly PartField[]): [string, PartField[]][] {
  const groups = new Map<string, PartField[]>();
  for (const field of fields) groups.set(field.group ?? "", [...(groups.get(field.group ?? "") ?? []), field]);
  return [...groups];
}

function FieldGroup({ heading, children }: { heading: string; children: ReactNode }) {
  if (heading === "") return <div className="part-fields">{children}</div>;
  return (
    <fieldset className="part-group">
      <legend className="caption">{heading}</legend>
      <div className="part-fields">{children}</div>
    </fieldset>
  );
}
