"""What the sender says about a figure: about so much, sorry, rather the other, may become."""
