"""Figures that are no part of a tube's size: angles, pieces, dies, machines, things built."""
