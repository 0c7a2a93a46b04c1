-- What stands behind an assessment of strength: its report, and each working under its name, read when it is opened.
create table "assessment_report" (
  "project_id" uuid not null,
  "letter" text not null,
  "attempt" integer not null,
  "report" jsonb not null,
  constraint "assessment_report_pkey" primary key ("project_id", "letter", "attempt"),
  constraint "assessment_report_project_id_letter_attempt_fkey" foreign key ("project_id", "letter", "attempt") references "assessment" ("project_id", "letter", "attempt") on delete no action on update no action
);

create table "assessment_working" (
  "project_id" uuid not null,
  "letter" text not null,
  "attempt" integer not null,
  "place" integer not null,
  "id" text not null,
  "working" jsonb not null,
  constraint "assessment_working_pkey" primary key ("project_id", "letter", "attempt", "id"),
  constraint "assessment_working_project_id_letter_attempt_fkey" foreign key ("project_id", "letter", "attempt") references "assessment" ("project_id", "letter", "attempt") on delete no action on update no action
);

do $$
declare
  kept text;
begin
  foreach kept in array array['assessment_report', 'assessment_working'] loop
    execute format('create trigger %I before update or delete on %I for each row execute function "refuse_alteration"()', kept || '_kept', kept);
    execute format('create trigger %I before truncate on %I for each statement execute function "refuse_alteration"()', kept || '_whole', kept);
    execute format('grant select, insert on %I to cornerway_service', kept);
  end loop;
end
$$;
