"""Lists and lines that are owned as a whole: a heading above them says so, or their own end."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .owned import WANTED

_STOP = late_pattern(r"[^\W_][.!?]\s+[^\W\d_]")
_IT = r"(?:it|that|this|these)"
_LINE_OWNED = late_pattern(
    r"\b"
    + any_of(
        "(?:we've|we have|i've|i have|got|have) (?:already )?(?:this|that|it|these|one)(?: one)? "
        "already",
        f"leave {_IT} (?:off|out) | (?:don't|do not) (?:need|want|quote) {_IT}",
        "no need for (?:it|this|that) | skip (?:it|that|this)",
        r"already (?:have|got|covered|own)(?: (?:it|this|that|one))?\s*(?:$|[,.;)])",
        "(?:haben|hab) (?:wir|ich) schon | brauchen wir nicht | ya (?:lo|la) tenemos",
        "on l'a déjà | ce l'abbiamo già | hebben we al",
    )
)
_ANOTHER_THING = late_pattern(
    r"\b(?:[\w-]*(?:backen?|formen?|rollen?|schuhe?|platten?|rohre?|werkzeuge?|maschinen?|faltenglätter"
    r"|klötze)|matrices?|mâchoires?|mors|galets?|outillages?|tubes?|patins?|mordazas?|matriz|tubos?"
    r"|utillajes?|ganasce|morse|matric[ei]|tubi|attrezzi|klemmen|klembekken|mallen|mal|buizen"
    r"|gereedschap|dies?|formers?|clamps?|jaws?|wipers?|pressure dies?|tubing|tooling|material)"
    r"[,;]?\s$"
)
"""'Die Spannbacken haben wir schon': of another thing than the mandrel."""
_JOB = (
    r"[^:\n]{0,40}?\b(?:tubes?|tubing|pipes?|sizes?|jobs?|parts?|bends?|projects?|orders?|rfqs?|to"
    r"|need|want|quote|price)\b"
)
"""'We have two tubes to bend and need mandrels:' tells no tooling."""
_OWNED_HEADING = late_pattern(
    r"^[ \t]*"
    + any_of(
        rf"(?:we |i )?(?:have|got)(?! already|{_JOB}) | (?:we |i )?(?:already (?:have|got)|own"
        "|(?:have|got) already) | (?:already )?(?:own|in stock|on hand)",
        "existing | do not quote | not needed | (?:schon )?vorhanden | haben wir(?: schon)?",
        "nicht anbieten | on a déjà | déjà en stock | ya tenemos | ya hay | (?:abbiamo )?già",
        "(?:al )?aanwezig | hebben we al | what (?:we|i) (?:already )?(?:have|own|got)",
        r"(?:(?:here'?s|this is) )?what(?:'?s| is) (?:already )?(?:in|on) (?:our|the|my)",
        r"(?:in|on) (?:our|my) (?:drawer|rack|shelf|cabinet|crib)",
        r"(?:our|my) (?:mandrels|inventory)",
        "unser(?:e dorne| bestand) | nos mandrins | nuestros mandriles | i nostri mandrini",
        "onze doornen",
    )
    + r"\b[^:\n]{0,40}:[ \t]*\n\s*",
    re.IGNORECASE | re.MULTILINE,
)
_END_OF_LIST = late_pattern(r"\n[ \t]*\n|\n[^\n\d]{2,50}:[ \t]*(?=\n)")


def hear_owned_lists(layout: Layout) -> None:
    """'HAVE (from you): ... NEED: ...': the list below such a heading is not asked for."""
    if _OWNED_HEADING.search(layout.text) is None:
        return
    spans: list[tuple[int, int]] = []
    for heading in _OWNED_HEADING.finditer(layout.text):
        end = _END_OF_LIST.search(layout.text, heading.end())
        spans.append((heading.end(), end.start() if end is not None else len(layout.text)))
    for figure in layout.figures:
        if any(begin <= figure.start < end for begin, end in spans):
            figure.negated = True


def hear_owned_lines(layout: Layout) -> None:
    """'Push handle 22 OD, 1.5 wall, 35 CLR, we've this one already': a line that is not wanted."""
    by_line: dict[tuple[int, int], list[Figure]] = {}
    for figure in layout.figures:
        by_line.setdefault((figure.line, figure.sentence), []).append(figure)
    for figures in by_line.values():
        if len(figures) < 2:
            continue
        begin = layout.text.rfind("\n", 0, figures[0].start) + 1
        end = layout.text.find("\n", figures[-1].end)
        following = layout.after(figures[-1])
        if following is not None and following.line == figures[-1].line:
            end = following.start  # "R 65 und R 85. Für R 200 haben wir schon einen."
        after = layout.words(figures[1].end, end if end >= 0 else len(layout.text))
        told = [found.start() for found in _LINE_OWNED.finditer(after)]
        # not "... 38 x 2, R 114. De mal hebben we al": another sentence
        owned = any(
            not _ANOTHER_THING.search(after, 0, place) and not _STOP.search(after, 0, place)
            for place in told
        )
        if owned and not WANTED.search(layout.words(begin, end)):
            for figure in figures:
                figure.negated = figure.owned = True
