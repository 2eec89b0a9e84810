"""Numbers as customers spell them, with the signs and units right beside them."""
