"""Sizes of a list asked for or set aside by place, mark or name."""
