"""What the fuzzing starts from: labelled messages, sizes drawn from the notation grammar, mail of
every build."""

from __future__ import annotations

import importlib.util
import sys
from email.message import EmailMessage
from email.policy import SMTP
from pathlib import Path
from types import ModuleType

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

TESTS = Path(__file__).parents[1]
FOLDERS = (
    TESTS / "corpus/dev",
    TESTS / "corpus/dev2",
    TESTS.parent / "demo_mailbox",
)
_LONGEST = 6000
"""Of a labelled message: one with a picture in it would cost more than it finds [bytes]."""


def labelled_messages() -> list[bytes]:
    """The labelled messages that are not too long, as they lie on disk."""
    files = [file for folder in FOLDERS for file in sorted(folder.glob("*.eml"))]
    return [raw for file in files if len(raw := file.read_bytes()) <= _LONGEST]


def drawn_sizes(count: int) -> list[str]:
    """So many sizes written down by the notation grammar; the same ones in every run."""
    notation = _notation()
    inch, metric = notation.inch_tubes(), notation.metric_tubes()
    written = st.one_of(
        inch.flatmap(notation.inch_line),
        metric.flatmap(notation.metric_line),
        st.one_of(inch, metric).flatmap(notation.labelled_fields),
        st.one_of(inch, metric).flatmap(notation.text_table),
    )
    found: list[str] = []

    @seed(1)
    @settings(
        max_examples=count,
        database=None,
        deadline=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(written)
    def collect(text: str) -> None:
        found.append(text)

    collect()
    return found


def _notation() -> ModuleType:
    """The grammar of the round trips; it lies among the tests, which are no package."""
    spec = importlib.util.spec_from_file_location("notation", TESTS / "intake/reading/notation.py")
    if spec is None or spec.loader is None:
        raise RuntimeError("tests/intake/reading/notation.py is not there")
    module = importlib.util.module_from_spec(spec)
    sys.modules["notation"] = module  # its dataclass looks it up while it is made
    spec.loader.exec_module(module)
    return module


def mail_of(text: str, build: int) -> bytes:
    """The words as a mail of one of ``BUILDS`` builds."""
    mail = EmailMessage(policy=SMTP)
    mail["From"] = "Pat Sample <pat@example.com>"
    mail["To"] = "sales@example.net"
    mail["Subject"] = ("Dorn für Rohr Ø 38", "Re: mandrel", "1.5 x .065", "", "Fwd: RFQ")[build % 5]
    mail["Date"] = "Tue, 24 Nov 2026 08:00:00 -0600"
    mail["Message-ID"] = "<1@example.com>"
    lines = text.splitlines() or [""]
    cells = "".join(f"<tr><td>{'</td><td>'.join(line.split())}</td></tr>" for line in lines)
    match build:
        case 0:
            mail.set_content(text, cte="quoted-printable")
        case 1:
            mail.set_content(text, cte="base64")
        case 2:
            latin = text.encode("iso-8859-1", "replace").decode("iso-8859-1")
            mail.set_content(latin, charset="iso-8859-1")
        case 3:
            mail.set_content(f"<p>{'<br>'.join(lines)}</p><table>{cells}</table>", subtype="html")
        case 4:
            mail.set_content(text)
            mail.add_alternative(f"<div>{'<br>'.join(lines)}</div>", subtype="html")
        case 5:
            mail.set_content("The sizes are attached, one mandrel of each please.")
            mail.add_attachment(text.encode(), "text", "csv", filename="sizes.csv")
        case 6:
            mail.set_content(f"Hi,\n\nsee below.\n\n> {text.replace(chr(10), chr(10) + '> ')}")
        case 7:
            mail.set_content("This one please.")
            inner = EmailMessage(policy=SMTP)
            inner["From"] = "Lou <lou@example.org>"
            inner["Subject"] = "mandrel"
            inner.set_content(text)
            mail.add_attachment(inner)
        case _:
            mail.set_content(f"{text}\n\n-- \nPat Sample\n330-555-0145\n")
    return mail.as_bytes()


BUILDS = 9
