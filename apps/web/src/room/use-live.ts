import type { Presence, Project } from "@cornerway/schema";
import { useQueryClient } from "@tanstack/react-query";
import { useCallback, useEffect, useRef, useState } from "react";
import type { DraftStore } from "../data/draft/draft-store.ts";
import { LiveSocket } from "../data/live-socket.ts";
import type { Here } from "../data/live-socket.ts";
import { takeEntries } from "../data/take-entries.ts";

/** The live line of a project: entries go to the draft and the cache, people to whoever shows them. */
export function useLive(project: Project, draft: DraftStore | null) {
  const client = useQueryClient();
  const [lineDownSince, setLineDownSince] = useState<number | null>(null);
  const [here, setHere] = useState<Here>([]);
  const socket = useRef<LiveSocket | null>(null);
  const { id, last } = project;
  const from = useRef(last);
  const told = useRef<Presence | null>(null);

  useEffect(() => {
    const line = new LiveSocket(liveAddress(id), from.current, {
      entries: ({ entries }) => {
        draft?.receive(entries);
        takeEntries(client, id, entries);
      },
      here: setHere,
      line: (up) => {
        setLineDownSince((since) => (up ? null : (since ?? Date.now())));
        if (up) draft?.retry();
      },
    });
    socket.current = line;
    if (told.current !== null) line.tell(told.current);
    return () => line.end();
  }, [client, draft, id]);

  const tell = useCallback((presence: Presence) => {
    told.current = presence;
    socket.current?.tell(presence);
  }, []);
  return { lineDownSince, here, tell };
}

const liveAddress = (projectId: string) => `${location.origin.replace(/^http/, "ws")}/api/projects/${projectId}/live`;
