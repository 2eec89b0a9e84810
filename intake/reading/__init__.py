"""Reading tube sizes out of a message: numbers, lengths, mentions, roles, requests, doubts."""

from .fields import parse_field
from .reader import Reading, read

__all__ = ["Reading", "parse_field", "read"]
