"""The shop's mailbox over IMAP: mail in, approved drafts into Drafts. It sends nothing."""
