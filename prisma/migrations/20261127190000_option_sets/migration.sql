-- Alternatives side by side. Drawings, answers and picks are kept as they were: each is written once.
create table "option_set" (
  "project_id" uuid not null,
  "id" uuid not null,
  "number" integer not null,
  "name" text not null,
  "author" jsonb not null,
  "opened_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "option_set_pkey" primary key ("project_id", "id"),
  constraint "option_set_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "option_set_project_id_number_key" on "option_set" ("project_id", "number");

create table "kept_option" (
  "project_id" uuid not null,
  "id" uuid not null,
  "set_id" uuid not null,
  "place" integer not null,
  "name" text not null,
  "content_digest" text not null,
  "scheme" jsonb not null,
  "containers" integer not null,
  "author" jsonb not null,
  "kept_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "kept_option_pkey" primary key ("project_id", "id"),
  constraint "kept_option_place" check ("place" between 1 and 6),
  constraint "kept_option_project_id_set_id_fkey" foreign key ("project_id", "set_id") references "option_set" ("project_id", "id") on delete no action on update no action
);
create unique index "kept_option_project_id_set_id_place_key" on "kept_option" ("project_id", "set_id", "place");

-- The engine's answer to an alternative, or why there is none.
create table "option_answer" (
  "project_id" uuid not null,
  "option_id" uuid not null,
  "state" text not null,
  "engine_version" text not null,
  "result" jsonb,
  "result_digest" text,
  "why" text,
  "done_at" timestamptz(3) not null,
  constraint "option_answer_pkey" primary key ("project_id", "option_id"),
  constraint "option_answer_project_id_option_id_fkey" foreign key ("project_id", "option_id") references "kept_option" ("project_id", "id") on delete no action on update no action
);

create table "option_pick" (
  "project_id" uuid not null,
  "id" uuid not null,
  "set_id" uuid not null,
  "option_id" uuid not null,
  "entry" integer not null,
  "content_digest" text not null,
  "reason" text,
  "author" jsonb not null,
  "picked_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "option_pick_pkey" primary key ("project_id", "id"),
  constraint "option_pick_project_id_set_id_fkey" foreign key ("project_id", "set_id") references "option_set" ("project_id", "id") on delete no action on update no action,
  constraint "option_pick_project_id_option_id_fkey" foreign key ("project_id", "option_id") references "kept_option" ("project_id", "id") on delete no action on update no action
);

do $$
declare
  kept text;
begin
  foreach kept in array array['option_set', 'kept_option', 'option_answer', 'option_pick'] loop
    execute format('create trigger %I before update or delete on %I for each row execute function "refuse_alteration"()', kept || '_kept', kept);
    execute format('create trigger %I before truncate on %I for each statement execute function "refuse_alteration"()', kept || '_whole', kept);
    execute format('grant select, insert on %I to cornerway_service', kept);
  end loop;
end
$$;
