-- A failed assessment can be run again: each run has its own answer, and none is altered.
alter table "assessment" add column "attempt" integer not null default 1;
alter table "assessment" drop constraint "assessment_pkey";
alter table "assessment" add constraint "assessment_pkey" primary key ("project_id", "letter", "attempt");

-- A run is asked for by sending the revision, or again by a person; `steps` of it are done.
create table "assessment_run" (
  "project_id" uuid not null,
  "letter" text not null,
  "attempt" integer not null,
  "asked_by" jsonb,
  "asked_at" timestamptz(3) not null,
  "started_at" timestamptz(3),
  "steps" integer not null default 0,
  constraint "assessment_run_pkey" primary key ("project_id", "letter", "attempt"),
  constraint "assessment_run_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
insert into "assessment_run" ("project_id", "letter", "attempt", "asked_at")
  select "project_id", "letter", 1, "sent_at" from "revision";
grant select, insert on "assessment_run" to cornerway_service;
grant update ("started_at", "steps") on "assessment_run" to cornerway_service;

-- Who takes jobs from the queue, and when each last said that it is there.
create table "worker" (
  "id" text not null,
  "beat_at" timestamptz(3) not null,
  constraint "worker_pkey" primary key ("id")
);
grant select, insert, update, delete on "worker" to cornerway_service;
