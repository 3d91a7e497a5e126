
-- What the schema language cannot say. ------------------------------------------------------------

create extension if not exists btree_gist;

-- No two commitments of one crew may overlap; a commitment that ends when another begins does not.
alter table "Commitment"
  add constraint "Commitment_crew_once" exclude using gist
  ("crewId" with =, tstzrange("startAt", "finishAt") with &&)
  where (state = 'held' and "crewId" is not null);

-- A phase is committed at most once at a time.
create unique index "Commitment_phase_once" on "Commitment" ("phaseId") where (state = 'held');

-- A company has at most one open proposal.
create unique index "Proposal_open_once" on "Proposal" ("companyId") where (state = 'open');

alter table "Commitment" add constraint "Commitment_forward" check ("finishAt" >= "startAt");
alter table "Phase" add constraint "Phase_duration" check ("durationMinutes" >= 0);
alter table "Phase" add constraint "Phase_actuals" check (
  ("actualFinish" is null or ("actualStart" is not null and "actualFinish" >= "actualStart"))
  and (state <> 'done' or "actualFinish" is not null)
  and (state <> 'waiting' or "actualStart" is null));
alter table "Link" add constraint "Link_two_phases" check ("fromId" <> "toId");
alter table "EquipmentPool" add constraint "EquipmentPool_quantity" check (quantity >= 0);
alter table "EquipmentHold" add constraint "EquipmentHold_quantity" check (quantity > 0);
alter table "Crew" add constraint "Crew_size" check (size > 0);
alter table "WeatherHold" add constraint "WeatherHold_forward" check ("endsAt" is null or "endsAt" > "startsAt");
alter table "Inspection" add constraint "Inspection_visit" check (
  state <> 'booked' or ("visitFrom" is not null and "visitTo" is not null and "visitTo" > "visitFrom"));
-- An authority's inspection or a cable reading can never be waived.
alter table "HoldPoint" add constraint "HoldPoint_waiver" check (
  state <> 'waived' or (waivable and kind not in ('inspection', 'reading') and reason is not null));

-- The journal is written once.
create function journal_is_final() returns trigger language plpgsql as $$
begin
  raise exception 'The journal is written once; add a new entry instead.';
end;
$$;
create trigger journal_is_final before update or delete on "JournalEntry"
  for each row execute function journal_is_final();
