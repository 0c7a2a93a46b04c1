import { elementsOf, type Scheme } from "@cornerway/schema";
import { useMemo, useRef, useState } from "react";

const nothing: readonly string[] = [];

/** What is chosen: nothing, one thing or several; what is no longer on the drawing falls out by itself. */
export function useChosen(scheme: Scheme) {
  const [wanted, setWanted] = useState(nothing);
  const pressing = useRef(false);
  const chosenIds = useMemo(() => {
    const drawn = new Set(elementsOf(scheme).map(({ id }) => id));
    const left = wanted.filter((id) => drawn.has(id));
    return left.length === wanted.length ? wanted : left;
  }, [scheme, wanted]);
  return {
    chosenIds,
    /** The one chosen last; null where nothing is. */
    chosenId: chosenIds.at(-1) ?? null,
    choose: (id: string | null) => setWanted(id === null ? nothing : [id]),
    chooseAll: (ids: readonly string[]) => setWanted([...new Set(ids)]),
    /** Takes a thing into the choice, or out of it. */
    chooseAlso: (id: string) =>
      setWanted((now) => (now.includes(id) ? now.filter((other) => other !== id) : [...now, id])),
    /** The focus came to a thing: by key it is chosen unless it is already; under the pointer the press decides. */
    focused: (id: string) => {
      if (!pressing.current) setWanted((now) => (now.includes(id) ? now : [id]));
    },
    pressed: (down: boolean) => {
      pressing.current = down;
    },
  };
}
