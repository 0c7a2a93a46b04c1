import type { PersonId, Presence, Project } from "@cornerway/schema";
import { useQueryClient } from "@tanstack/react-query";
import type { QueryClient } from "@tanstack/react-query";
import { useCallback, useEffect, useRef, useState } from "react";
import { changePerson } from "../data/change-person.ts";
import type { DraftStore } from "../data/draft/draft-store.ts";
import { takeRun } from "../data/assessment-run.ts";
import type { LiveListener, LiveSocket } from "../data/live-socket.ts";
import { projectKey } from "../data/project.ts";
import { sessionKey } from "../data/session.ts";
import { takeEntries } from "../data/take-entries.ts";
import { HereBoard } from "./here-board.ts";

/** The live line of a project: entries go to the draft and the cache, people to whoever shows them. */
export function useLive(project: Project, meId: PersonId, draft: DraftStore | null) {
  const client = useQueryClient();
  const [lineDownSince, setLineDownSince] = useState<number | null>(null);
  const [here] = useState(() => new HereBoard(meId));
  const socket = useRef<LiveSocket | null>(null);
  const { id, last } = project;
  const from = useRef(last);
  const told = useRef<Presence | null>(null);

  useEffect(() => {
    const listener: LiveListener = {
      entries: ({ entries }) => {
        draft?.receive(entries);
        takeEntries(client, id, entries);
      },
      here: here.put,
      assessing: (run) => takeRun(client, id, run),
      stale: () => void askAnew(client, id),
      line: (up) => {
        setLineDownSince((since) => (up ? null : (since ?? Date.now())));
        if (up) draft?.retry();
      },
    };
    let away = false;
    let line: LiveSocket | null = null;
    openLine(() => (away ? null : { address: liveAddress(id), after: from.current, listener })).then(
      (opened) => {
        line = opened;
        socket.current = opened;
        if (opened !== null && told.current !== null) opened.tell(told.current);
      },
      () => setLineDownSince(Date.now()),
    );
    return () => {
      away = true;
      line?.end();
    };
  }, [client, draft, id, here]);

  const tell = useCallback((presence: Presence) => {
    told.current = presence;
    socket.current?.tell(presence);
  }, []);
  return { lineDownSince, here, tell };
}

interface Line {
  address: string;
  after: number;
  listener: LiveListener;
}

/** What arrives comes after what stands: the line is fetched beside the sheet, with the shapes of all it may bring. */
async function openLine(wanted: () => Line | null): Promise<LiveSocket | null> {
  const { LiveSocket } = await import("../data/live-socket.ts");
  const line = wanted();
  return line === null ? null : new LiveSocket(line.address, line.after, line.listener);
}

/** Who is signed in is asked first; whoever still is gets the project, and the draft with it, as it is now. */
async function askAnew(client: QueryClient, projectId: string): Promise<void> {
  await client.refetchQueries({ queryKey: sessionKey });
  if (client.getQueryData(sessionKey) === null) changePerson(client, null);
  else await client.resetQueries({ queryKey: projectKey(projectId) });
}

const liveAddress = (projectId: string) => `${location.origin.replace(/^http/, "ws")}/api/projects/${projectId}/live`;
