import { Owed } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectsKey } from "./project.ts";

/** Read again with the projects: every entry of a record may change who owes what. */
export const owedKey = [...projectsKey, "owed"] as const;
export const fetchOwed = () => read(z.array(Owed), api.GET("/api/owed"));
export const useOwed = () => useQuery({ queryKey: owedKey, queryFn: fetchOwed });
