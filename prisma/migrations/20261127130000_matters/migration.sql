-- What is raised on a project and followed until it is closed: a question, a condition. Rows are added and read, nothing else.
create table "matter" (
  "project_id" uuid not null,
  "id" uuid not null,
  "kind" text not null,
  "number" integer not null,
  "entry" integer not null,
  "body" jsonb not null,
  "body_digest" text not null,
  constraint "matter_pkey" primary key ("project_id", "id"),
  constraint "matter_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "matter_project_id_kind_number_key" on "matter" ("project_id", "kind", "number");

create table "matter_step" (
  "project_id" uuid not null,
  "id" uuid not null,
  "matter_id" uuid not null,
  "ordinal" integer not null,
  "entry" integer not null,
  "body" jsonb not null,
  "body_digest" text not null,
  constraint "matter_step_pkey" primary key ("project_id", "id"),
  constraint "matter_step_project_id_matter_id_fkey" foreign key ("project_id", "matter_id") references "matter" ("project_id", "id") on delete no action on update no action
);
create unique index "matter_step_project_id_matter_id_ordinal_key" on "matter_step" ("project_id", "matter_id", "ordinal");

do $$
declare
  kept text;
begin
  foreach kept in array array['matter', 'matter_step'] loop
    execute format('create trigger %I before update or delete on %I for each row execute function "refuse_alteration"()', kept || '_kept', kept);
    execute format('create trigger %I before truncate on %I for each statement execute function "refuse_alteration"()', kept || '_whole', kept);
    execute format('grant select, insert on %I to cornerway_service', kept);
  end loop;
end
$$;
