"""Reading tube sizes out of a message: numbers, lengths, mentions, roles, requests, doubts."""

from .reader import Reading, parse_field, read

__all__ = ["Reading", "parse_field", "read"]
