import type { ElementOf, Operation, Scheme } from "@cornerway/schema";
import { writes } from "../../tools/element-operations.ts";
import { useContext } from "react";
import { Typing } from "../typing.ts";
import { PartForm } from "../part/PartForm.tsx";
import type { PartList } from "./part-list.ts";
import { partTables } from "./part-tables.ts";

interface ChosenPartProps<N extends PartList> {
  scheme: Scheme;
  list: N;
  id: string;
  name: string;
  asleepBecause?: string | undefined;
  onDraw: (operations: Operation[]) => void;
}

/** Every property of a chosen thing, each typed or chosen; what is changed is one act. */
export default function ChosenPart<N extends PartList>(props: ChosenPartProps<N>) {
  const { scheme, list, id, name, onDraw, asleepBecause } = props;
  const typing = useContext(Typing);
  const table = partTables[list];
  const elements: readonly ElementOf<N>[] = scheme[list];
  const element = elements.find((each) => each.id === id);
  if (element === undefined) return null;
  return (
    <PartForm
      key={id}
      live
      element={element}
      schema={table.schema}
      fields={table.fields(element)}
      {...(table.settle === undefined ? {} : { settle: table.settle })}
      command={list === "containers" ? `State it of ${name}` : `Draw ${name} so`}
      asleepBecause={asleepBecause}
      onTyping={(next) => typing(next === null ? null : [writes[list].change(next)])}
      onElement={(next) => {
        if (JSON.stringify(next) !== JSON.stringify(element)) onDraw([writes[list].change(next)]);
      }}
    />
  );
}
