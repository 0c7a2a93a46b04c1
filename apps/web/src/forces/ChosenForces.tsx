import type { RunForces } from "@cornerway/engine";
import type { Scheme, StrengthReport } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { useUnits } from "../units/use-units.ts";
import { namesIn } from "../wording/name-of.ts";
import { UtilisationBar } from "../working/UtilisationBar.tsx";
import { memberRows, type MemberRow } from "./member-rows.ts";
import "./forces.css";

export interface ChosenForcesProps {
  forces: RunForces | null;
  scheme: Scheme;
  report: StrengthReport | null;
  chosenId: string | null;
  onOpen: (elementId: string, checkId: string) => void;
}

const shownFirst = 4;

/** What the members of the chosen thing carry in the run drawn, the fullest first, each with the way to its working. */
export function ChosenForces({ forces, scheme, report, chosenId, onOpen }: ChosenForcesProps) {
  const units = useUnits();
  const [all, showAll] = useState(false);
  if (forces === null || chosenId === null) return null;
  const rows = memberRows(forces.members, report, scheme, { elementId: chosenId, units });
  if (rows.length === 0) return null;
  const shown = all ? rows : rows.slice(0, shownFirst);
  return (
    <Slip label={`Forces in ${namesIn(scheme)(chosenId)}`}>
      <ul className="member-forces">
        {shown.map((row) => (
          <Member key={row.name} row={row} onOpen={onOpen} />
        ))}
      </ul>
      {rows.length > shownFirst ? (
        <Command quiet onPress={() => showAll(!all)}>
          {all ? "The fullest only" : `All ${rows.length} members`}
        </Command>
      ) : null}
    </Slip>
  );
}

function Member({ row, onOpen }: { row: MemberRow; onOpen: ChosenForcesProps["onOpen"] }) {
  const { name, axial, shear, moment, where, check } = row;
  return (
    <li>
      <span className="member-name">{name}</span>
      <span className="member-figures">
        N {axial} · V {shear} · M {moment}, {where}
      </span>
      {check === null ? null : (
        <span className="member-check">
          {check.utilisation === null ? (
            "No strength can be stated."
          ) : (
            <UtilisationBar utilisation={check.utilisation} />
          )}
          <Command quiet onPress={() => onOpen(check.ownerId, check.id)}>
            {`Working: ${check.check}`}
          </Command>
        </span>
      )}
    </li>
  );
}
