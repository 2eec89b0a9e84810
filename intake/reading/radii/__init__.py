"""Which radius is meant, and which tube it is for."""
