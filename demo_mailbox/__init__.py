"""An invented shop's messages, for the demo and for trying things out."""
