"""The chat account that listens: messages in over XMPP (RFC 6120, 6121), and nothing said."""
