"""Figures put together to sizes: what belongs together, the likeliest reading, its doubts."""
