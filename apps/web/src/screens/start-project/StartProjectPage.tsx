import { StartProject } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { Link, useNavigate } from "@tanstack/react-router";
import { useForm } from "react-hook-form";
import { z } from "zod";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useStartProject } from "../../data/people.ts";
import { useSession } from "../../data/session.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { ArchiveForm } from "./ArchiveForm.tsx";
import { FirstProject } from "./FirstProject.tsx";
import "./start-project.css";

const parts = { none: null, architect: "architect", owner: "owner" } as const;
const Words = StartProject.omit({ ownPart: true }).extend({ part: z.enum(["none", "architect", "owner"]) });
type Words = z.infer<typeof Words>;

/** An administrator starts a project, and goes on to ask people in. */
export function StartProjectPage() {
  const session = useSession();
  const administrator = session.data?.person.administrator ?? false;
  return (
    <PageSheet
      title="Start a project"
      heading={administrator ? "Start a project" : "Only an administrator starts a project"}
      way={
        <Link className="command" to="/">
          To the desk
        </Link>
      }
    >
      {administrator ? (
        <div className="page-columns">
          <StartForm />
          <ArchiveForm />
        </div>
      ) : (
        <p>Whoever set up this service is its administrator, and can start one and ask you in.</p>
      )}
      <FirstProject />
    </PageSheet>
  );
}

function StartForm() {
  const start = useStartProject();
  const navigate = useNavigate();
  const { register, handleSubmit, formState } = useForm<Words>({
    resolver: zodResolver(Words),
    defaultValues: { name: "", place: "", client: "", part: "none" },
  });
  const { name, place, client } = formState.errors;
  const send = ({ part, ...words }: Words) =>
    start.mutate(
      { ...words, ownPart: parts[part] },
      { onSuccess: ({ id }) => void navigate({ to: "/projects/$projectId/people", params: { projectId: id } }) },
    );
  return (
    <form className="start-project" noValidate onSubmit={(event) => void handleSubmit(send)(event)}>
      <PersonField label="Name of the project" fault={name && "The name is missing."}>
        {(bound) => <input {...bound} {...register("name")} autoComplete="off" />}
      </PersonField>
      <PersonField label="Place" fault={place && "The place is missing."}>
        {(bound) => <input {...bound} {...register("place")} autoComplete="off" />}
      </PersonField>
      <PersonField label="Whom it is built for" fault={client && "This is missing."}>
        {(bound) => <input {...bound} {...register("client")} autoComplete="off" />}
      </PersonField>
      <fieldset>
        <legend>Your own part in it</legend>
        <label>
          <input type="radio" value="none" {...register("part")} /> None: others draw and judge
        </label>
        <label>
          <input type="radio" value="architect" {...register("part")} /> Architect
        </label>
        <label>
          <input type="radio" value="owner" {...register("part")} /> Owner
        </label>
      </fieldset>
      <Refused error={start.error} />
      <Command next type="submit" onPress={() => undefined}>
        {start.isPending ? "Starting" : "Start it and ask people in"}
      </Command>
    </form>
  );
}
