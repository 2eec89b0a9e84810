"""Everything that touches the world: mail and chat in, drafts and reports out."""
