"""Tables in a message, row by row."""
