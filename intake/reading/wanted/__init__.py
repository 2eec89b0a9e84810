"""Whether a size that is named is one that is asked for, or only told of."""
