"""What a reply takes from the mails that it quotes."""
