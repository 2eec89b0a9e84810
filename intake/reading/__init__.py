"""Reading tube sizes out of a message: numbers, lengths, mentions, roles, requests, doubts."""
