import type { Operation, Scheme } from "@cornerway/schema";
import { useState } from "react";
import { groupBox, middleOf } from "../../tools/chosen-group.ts";
import { copyGroup } from "../../tools/copy-group.ts";
import { layGroup } from "../../tools/lay-group.ts";
import { mirroredAt, shiftedBy, turnedAbout } from "../../tools/laying.ts";
import { PartForm } from "../part/PartForm.tsx";
import {
  copyFields,
  CopySteps,
  mirrorFields,
  MirrorAbout,
  moveFields,
  MoveBy,
  turnFields,
  TurnBy,
} from "./lay-out-forms.ts";
import { ChoiceField } from "./ChoiceField.tsx";

interface LayOutProps {
  scheme: Scheme;
  ids: readonly string[];
  /** What is laid out: "F1", "these 4". */
  name: string;
  onDraw: (operations: Operation[]) => void;
}

const ways = ["copy", "mirror", "move", "turn"] as const;
type Way = (typeof ways)[number];

/** The chosen things copied once or many times, mirrored, moved or turned together, by typed numbers. */
export default function LayOut({ scheme, ids, name, onDraw }: LayOutProps) {
  const [way, setWay] = useState<Way>("copy");
  const box = groupBox(scheme, ids);
  if (box === null) return <p>{`${name} has no place of its own to be laid from.`}</p>;
  const wideUm = box.eastUm - box.westUm;
  const mirror = (about: MirrorAbout): Operation[] => {
    const laying = mirroredAt(about.line, about.atUm);
    return about.copied ? copyGroup(scheme, ids, [laying]) : layGroup(scheme, ids, laying);
  };
  const copies = ({ eastUm, northUm, upUm, times }: CopySteps) =>
    copyGroup(
      scheme,
      ids,
      Array.from({ length: times }, (_, at) => shiftedBy((at + 1) * eastUm, (at + 1) * northUm, (at + 1) * upUm)),
    );
  return (
    <>
      <ChoiceField label="Lay out" value={way} options={ways} onChange={setWay} />
      {way === "copy" ? (
        <PartForm
          element={{ eastUm: wideUm, northUm: 0, upUm: 0, times: 1 }}
          schema={CopySteps}
          fields={copyFields}
          command={`Copy ${name}`}
          onElement={(steps) => onDraw(copies(steps))}
        />
      ) : null}
      {way === "mirror" ? (
        <PartForm
          element={mirrorAt(box.eastUm)}
          schema={MirrorAbout}
          fields={mirrorFields}
          command={`Mirror ${name}`}
          onElement={(about) => onDraw(mirror(about))}
        />
      ) : null}
      {way === "move" ? (
        <PartForm
          element={{ eastUm: 0, northUm: 0, upUm: 0 }}
          schema={MoveBy}
          fields={moveFields}
          command={`Move ${name}`}
          onElement={({ eastUm, northUm, upUm }) => onDraw(layGroup(scheme, ids, shiftedBy(eastUm, northUm, upUm)))}
        />
      ) : null}
      {way === "turn" ? (
        <PartForm
          element={{ byMdeg: 90_000 }}
          schema={TurnBy}
          fields={turnFields}
          command={`Turn ${name}`}
          onElement={({ byMdeg }) => onDraw(layGroup(scheme, ids, turnedAbout(middleOf(box), byMdeg)))}
        />
      ) : null}
    </>
  );
}

const mirrorAt = (atUm: number): MirrorAbout => ({ line: "north–south", atUm, copied: true });
