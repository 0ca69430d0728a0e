-- A draft goes when all work of its visit is taken back. The trigger that keeps issued documents refuses theirs.
grant delete on charge_document to deckround_app;
