import type { CheckResult } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { useEffect, useRef } from "react";
import { CautionLine } from "../controls/CautionLine.tsx";
import { Command } from "../controls/Command.tsx";
import { Ruled } from "../controls/Ruled.tsx";
import { useUnits } from "../units/use-units.ts";
import { WorkingSheet } from "../working/WorkingSheet.tsx";
import { namesIn } from "../wording/name-of.ts";
import { CheckHead } from "./CheckHead.tsx";
import type { CheckSource, DeflectedIn } from "./check-source.ts";
import { ownChecks, usedText } from "./own-checks.ts";

export interface CheckPaperProps {
  source: CheckSource;
  /** The thing whose checks are turned through. */
  elementId: string;
  /** The check or load that is open; the fullest check without one. */
  checkId: string | null;
  deflectedIn?: DeflectedIn | undefined;
  onCheck: (id: string) => void;
  onClose: () => void;
}

/** One working, laid on the sheet: what governs it and under what, then the calculation itself. */
export default function CheckPaper({ source, elementId, checkId, deflectedIn, onCheck, onClose }: CheckPaperProps) {
  const paper = usePaper(onClose);
  const results = source.report === null ? [] : ownChecks(source.report, source.scheme, elementId);
  const load = source.report?.loads.find(({ id }) => id === checkId);
  const open = source.report?.results.find(({ id }) => id === checkId) ?? results[0];
  const nameOf = namesIn(source.scheme);
  const deflect = open === undefined ? undefined : deflectedIn?.(open.run);
  const title = load?.title ?? (open === undefined ? "" : `${nameOf(open.ownerId)} ${open.part} ${open.place}`);
  return (
    <section ref={paper} className="check-paper" role="dialog" aria-label={`Working: ${title}`} tabIndex={-1}>
      <header className="check-paper-head">
        <p className="caption">Calculation, screening</p>
        <Command quiet shortcut="Esc" onPress={onClose}>
          Take the working away
        </Command>
      </header>
      {load !== undefined ? (
        <Calculation key={load.id} source={source} id={load.id} />
      ) : open === undefined ? (
        <p>Nothing was judged here.</p>
      ) : (
        <>
          {results.length > 1 ? <Turn results={results} open={open} onCheck={onCheck} /> : null}
          <CheckHead result={open} name={nameOf(open.ownerId)} nameOf={nameOf} />
          {deflect === undefined ? null : (
            <Command
              quiet
              onPress={() => {
                deflect();
                onClose();
              }}
            >
              {`Draw ${nameOf(open.ownerId)} as it deflects under this run`}
            </Command>
          )}
          {open.utilisation === null ? (
            <p>No strength can be stated: {open.refused}. It is for the engineer to say.</p>
          ) : (
            <Calculation key={open.id} source={source} id={open.id} />
          )}
        </>
      )}
      <CautionLine />
    </section>
  );
}

/** Takes the focus when it is laid, and goes with Escape before anything beneath it lets go. */
function usePaper(onClose: () => void) {
  const paper = useRef<HTMLElement>(null);
  const close = useRef(onClose);
  useEffect(() => {
    close.current = onClose;
  });
  useEffect(() => {
    const element = paper.current;
    const press = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.stopPropagation();
      close.current();
    };
    element?.addEventListener("keydown", press);
    element?.focus();
    return () => element?.removeEventListener("keydown", press);
  }, []);
  return paper;
}

function Turn({
  results,
  open,
  onCheck,
}: {
  results: readonly CheckResult[];
  open: CheckResult;
  onCheck: (id: string) => void;
}) {
  return (
    <label className="check-turn">
      Checks here, the fullest first
      <select value={open.id} onChange={({ target }) => onCheck(target.value)}>
        {results.map((result) => (
          <option key={result.id} value={result.id}>
            {`${usedText(result)}  ${result.part} ${result.place}: ${result.check}`}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A calculation, fetched when it is opened. */
function Calculation({ source, id }: { source: CheckSource; id: string }) {
  const units = useUnits();
  const working = useQuery({
    queryKey: [...source.key, "working", id],
    queryFn: () => source.fetchWorking(id),
    staleTime: Infinity,
  });
  if (working.isPending) return <Ruled label="Fetching the working" lines={5} />;
  if (working.isError)
    return (
      <p role="alert">
        {working.error.message} <Command onPress={() => void working.refetch()}>Fetch it again</Command>
      </p>
    );
  if (working.data === null) return <p>The scheme has moved on. Its working comes with the next answer.</p>;
  return (
    <>
      <WorkingSheet working={working.data} number="1" />
      {units === "US" ? (
        <p className="working-note">Formulas are worked in N, mm and MPa, as they stand here.</p>
      ) : null}
    </>
  );
}
