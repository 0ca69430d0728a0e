-- A draft goes with the last work of its visit; what a person had stated on it (an order number, a note, minutes) stays with
-- the visit for the next one.
alter table visit add column stated_charges jsonb;
