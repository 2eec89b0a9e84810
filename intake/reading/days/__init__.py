"""When the mandrels are needed."""
