"""Characters to tokens: a text made plain, its words known, laid out in sentences and lines."""
