"""One file a migration, each applied whole or not at all."""
