-- Whoever reads by a link is a person without a password: what they may do and see is a reader's part like any other,
-- with an end. Nobody signs in as one, and no letter goes to one: `.invalid` is nobody's, RFC 2606.
alter table "person" add column "by_link" boolean not null default false;
alter table "person" add constraint "person_by_link" check (not "by_link" or (not "administrator" and "email" like '%@reader.invalid'));
grant insert ("by_link") on "person" to cornerway_service;

-- The link of such a reader is good until it ends or is withdrawn, and so works more than once.
alter table "one_time_link" drop constraint "one_time_link_whole";
alter table "one_time_link" add constraint "one_time_link_whole" check (case "kind"
  when 'invitation' then "email" is not null and "project_id" is not null and "role" is not null and "made_by" is not null
    and ("part_ends_at" is not null) = ("role" = 'reader')
  when 'new-password' then "person_id" is not null and "project_id" is null and "role" is null
  when 'first-administrator' then "email" is null and "person_id" is null and "project_id" is null and "role" is null
  when 'reader-link' then "email" is null and "person_id" is not null and "project_id" is not null and "role" is null
    and "made_by" is not null
  else false end);
