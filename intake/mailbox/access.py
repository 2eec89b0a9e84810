"""Into the mailbox and out again: TLS, login, and every fault of it in one clear sentence."""

from __future__ import annotations

import socket
import ssl
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import TYPE_CHECKING

from ...rules.shop_mailbox import Mailbox
from ..addressing import one_line
from ..desk_errors import LostMailboxError, MailboxError, MailboxLoginError
from .secret import Secret, secret_of

if TYPE_CHECKING:
    from imapclient import IMAPClient

CONNECT_WAIT_S = 20
"""How long a server may take to answer at all."""
LONGEST_SAID = 160
"""Characters of a server's own words that a sentence quotes."""


@contextmanager
def mailbox(settings: Mailbox, shop_folder: Path | None) -> Iterator[IMAPClient]:
    """The mailbox, logged in; left politely at the end. UIDs are used throughout.

    Raises MailboxLoginError (wrong password), LostMailboxError (no network, or a server that went
    away: trying again may help) or MailboxError, each one sentence. So does what is done inside.
    """
    secret = secret_of(settings)
    context = _trust(settings, shop_folder)
    with plainly(settings):
        client = _connected(settings, context)
        try:
            _log_in(client, settings, secret)
            yield client
        except BaseException:
            _hang_up(client)
            raise
        # What was done is done: a farewell that fails changes nothing.
        with suppress(OSError, _imap_error()):
            client.logout()


@contextmanager
def plainly(settings: Mailbox) -> Iterator[None]:
    """What network, certificate or server refuse, in one sentence each."""
    from imapclient import exceptions as imap

    host = f"the mail server {settings.host}"
    try:
        yield
    except imap.IMAPClientAbortError as error:
        raise LostMailboxError(f"{host} broke off the connection") from error
    except imap.IMAPClientError as error:
        raise MailboxError(f"{host} refused: {said_by(error)}") from error
    except ssl.SSLCertVerificationError as error:
        raise MailboxError(
            f"the certificate of {settings.host} can't be trusted: {error.verify_message}; "
            "nothing was sent to it"
        ) from error
    except ssl.SSLError as error:
        raise LostMailboxError(
            f"no TLS connection with {host} at port {settings.usual_port}: "
            f"{(error.reason or str(error)).lower().replace('_', ' ')}"
        ) from error
    except TimeoutError as error:
        raise LostMailboxError(
            f"{host} does not answer: given up after {settings.patience_seconds} s"
        ) from error
    except socket.gaierror as error:
        raise LostMailboxError(f"{host} is not found: {error.strerror}") from error
    except ConnectionError as error:
        raise LostMailboxError(
            f"no connection to {host} at port {settings.usual_port}: {error.strerror or error}"
        ) from error
    except OSError as error:
        # A disk has its own errors: only what the network says is ours to word here.
        if error.filename is not None or error.errno not in _network_errors():
            raise
        raise LostMailboxError(f"no connection to {host}: {error.strerror}") from error


def _connected(settings: Mailbox, context: ssl.SSLContext | None) -> IMAPClient:
    from imapclient import IMAPClient, SocketTimeout

    patience = settings.patience_seconds
    client = IMAPClient(
        settings.host,
        port=settings.usual_port,
        ssl=settings.security == "tls",
        ssl_context=context,
        timeout=SocketTimeout(connect=min(CONNECT_WAIT_S, patience), read=patience),
    )
    if settings.security == "starttls":
        try:
            client.starttls(context)
        except BaseException:
            _hang_up(client)
            raise
    return client


def _trust(settings: Mailbox, shop_folder: Path | None) -> ssl.SSLContext | None:
    if settings.security == "plain":
        return None
    context = ssl.create_default_context()
    if settings.ca_file is not None:
        path = (shop_folder or Path()) / settings.ca_file
        try:
            context.load_verify_locations(path)
        except ssl.SSLError as error:
            raise MailboxError(f"ca_file: {path} holds no certificate") from error
        except OSError as error:
            raise MailboxError(f"ca_file: {path} can't be read: {error.strerror}") from error
    return context


def _log_in(client: IMAPClient, settings: Mailbox, secret: Secret) -> None:
    from imapclient import exceptions as imap

    try:
        if secret.kind == "token":
            if client.has_capability("AUTH=OAUTHBEARER"):
                client.oauthbearer_login(settings.user, secret.words)
            else:
                client.oauth2_login(settings.user, secret.words)
        elif client.has_capability("LOGINDISABLED"):
            raise MailboxError(
                f"{settings.host} takes no password on this connection: see security in shop.toml"
            )
        else:
            client.login(settings.user, secret.words)
    except imap.IMAPClientAbortError:
        raise
    except imap.IMAPClientError as error:
        # What the server says may repeat what it was told, so the cause is cut off as well.
        words = said_by(error).replace(secret.words, "...")
        raise MailboxLoginError(
            f"{settings.host} does not let {settings.user} in with this {secret.kind}: {words}"
        ) from None


def _hang_up(client: IMAPClient) -> None:
    with suppress(OSError, _imap_error()):
        client.shutdown()


def _imap_error() -> type[Exception]:
    from imapclient.exceptions import IMAPClientError

    error: type[Exception] = IMAPClientError
    return error


def said_by(error: BaseException) -> str:
    """A server's own words on one line."""
    words = error.args[0] if error.args else ""
    if isinstance(words, bytes):
        words = words.decode("utf-8", "replace")
    return one_line(str(words), LONGEST_SAID) or type(error).__name__


def _network_errors() -> frozenset[int]:
    import errno

    return frozenset((errno.EHOSTUNREACH, errno.ENETUNREACH, errno.ENETDOWN, errno.EHOSTDOWN))
