-- The best planned age beside the threshold of opportunity: between the two, replacing while the place is open anyway
-- gains ever more.
alter table learned_life add column best_hours double precision check (best_hours > 0); -- null = waiting for failure is cheapest
