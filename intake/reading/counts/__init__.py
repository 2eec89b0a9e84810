"""How many mandrels are wanted."""
