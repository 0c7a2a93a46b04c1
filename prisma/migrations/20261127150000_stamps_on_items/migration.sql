-- A stamp is on one item, or on the revision as a whole where it names none. It keeps the office's own words and its conditions.
alter table "stamp" add column "element_id" text not null default '';
alter table "stamp" add column "wording" text;
alter table "stamp" add column "conditions" jsonb;
drop index "stamp_project_id_revision_key";
create unique index "stamp_project_id_revision_element_id_key" on "stamp" ("project_id", "revision", "element_id");

-- How an engineer's office words the four dispositions, as they state it.
alter table "person" add column "stamp_wording" jsonb;
grant update ("stamp_wording") on "person" to cornerway_service;
