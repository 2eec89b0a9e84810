"""A figure said elsewhere, called wrong, and the right one behind it: 'I said 40 radius on the
phone - wrong, 38.1', 'am Telefon habe ich 80 gesagt, das war falsch: 76'.

All three must be there: who said it, that it is wrong, and a figure of like size behind. A length
that is to be ignored ('forget the 3.5 CLR, I had measured the wrong edge: it comes out at 3') is
put right by what was found since.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.length_named import length_named
from ..text.patterns import any_of

_SAID = any_of(
    r"(?:i|we|i've|we've|i have|we have|he|she|they|my \w+|our \w+)"
    r" (?:\w+ly )?(?:said|told|gave|given|quoted|mentioned|wrote|written|put|stated|asked for)",
    r"(?:habe?n? (?:ich|wir)|hatten? (?:ich|wir)|(?:ich|wir) (?:habe?n?|hatten?)) | (?:sagte|nannte"
    r"|schrieb)n? (?:ich|wir) | (?:ich|wir) (?:sagte|nannte|schrieb)n?",
    r"(?:j'ai|j'avais|nous avons|on a|on avait) (?:dit|donné|annoncé|indiqué|écrit|parlé de)",
    r"(?:dije|dijimos|(?:he|hemos|había) (?:dicho|dado|puesto)|di|puse|indiqué)",
    r"(?:ho|abbiamo|avevo|avevamo) (?:detto|dato|indicato|scritto)",
    r"(?:zei|gaf|schreef|noemde) (?:ik|we) | (?:heb|hebben|had) (?:ik|we)"
    r" | (?:ik|we) (?:zei|heb|had|gaf)",
)
_SAID_BEFORE = late_pattern(rf"(?<![\w']){_SAID}\b[^.;!?\d]{{0,48}}$")
_WRONG = any_of(
    r"(?:all )?wrong | (?:in)correct(?<=incorrect) | not (?:right|correct) | (?:a|my) mistake",
    r"mis-?spoke | falsch | ein fehler | verkehrt | nicht richtig | stimmt nicht | faux | erreur",
    r"une erreur | pas (?:bon|juste) | mal | incorrecto | equivocado | un error | está mal",
    r"sbagliato | errato | un errore | fout | niet (?:juist|goed) | verkeerd | een fout",
)
_IS = any_of(
    r"that's | that is | that was | thats | which (?:is|was) | it's | it is | it was | but "
    r"that was",
    r"das (?:ist|war) | war | ist | c'est | c'était | es | eso (?:es|está|estaba) | era | è "
    r"| estaba",
    r"dat (?:is|was) | was",
)
_NOW = any_of(
    r"(?:it |that )?should (?:be|have been) | (?:it|that)(?:'s| is) | make (?:it|that) | "
    r"(?:the )?right"
    r" (?:one|figure|value) is | really | actually | i meant | richtig (?:ist|sind|wäre) | "
    r"es (?:sind|ist)"
    r" | c'est | il faut | es | son | è | sono | het is | moet | correct is",
)
_WRONG_BETWEEN = late_pattern(
    rf"^[^.;!?\d]{{0,56}}?[\s\W]{{1,4}}(?:{_IS}\s)?{_WRONG}(?!\w)[\s\W]{{1,4}}"
    rf"(?:(?:and|but|und|et|y|e|en|sorry|,)\s)?(?:{_NOW}\s)?"
    r"(?:(?:an?|the|ein|le|la|el|il|de|r|clr|radius|wall|od|ø)[\s=:]{1,2}){0,2}(?:r|ø)?$"
)
_IGNORED = late_pattern(
    r"\b"
    + any_of(
        r"ignore | disregard | forget | scratch | scrap | never mind | vergessen sie | vergesst",
        r"vergiss | ignorieren sie | oubliez | ignorez | olvid[ea]n? | ignoren | dimentichi",
        r"ignori | lasci\w{0,3} (?:stare|perdere) | vergeet | negeer",
    )
    + r"\b[^.;!?\d]{0,40}$"
)
_IGNORED_BEHIND = late_pattern(r"^[^.;!?\d]{0,30}\b(?:vergessen|ignorieren|streichen)\b")
_FOUND = late_pattern(
    r"\b"
    + any_of(
        r"(?:comes?|came|works?|worked|turns?|turned) (?:out )?(?:at|to|as)? | measured again",
        r"it's | it is | that's | should (?:be|have been) | make (?:it|that) | call it | is | use",
        r"kommt?(?: auf| man auf)? | ergibt | ist | sind | macht | gemessen",
        r"(?:cela|ça) (?:fait|donne) | c'est | on (?:trouve|obtient) | est | mesuré",
        r"sale | salen | da | son | es | queda en | me da | viene | vengono | risulta | sono | è",
        r"komt? (?:uit )?(?:op)? | het is | is | wordt",
    )
    + r"\s?(?:now |jetzt |also |de |an? |about )?:?$"
)
_IGNORED_FAR = 170
_LEAST, _MOST = Decimal("0.3"), Decimal("3.4")
_AHEAD = 72
_BETWEEN = 110


def hear_said_elsewhere(layout: Layout) -> None:
    """Deny what was said elsewhere and is wrong; the figure behind it puts it right."""
    for old, new in zip(layout.figures, layout.figures[1:], strict=False):
        if old.negated or new.negated or new.start - old.end > _BETWEEN or old.link == "times":
            continue
        if new.sentence - old.sentence > 1 or not _are_alike(old, new):
            continue
        between = " ".join(layout.words(old.end, new.start).split()) + " "
        if not _WRONG_BETWEEN.match(between.rstrip()) and not _WRONG_BETWEEN.match(between):
            continue
        if _SAID_BEFORE.search(_ahead(layout, old)) is None:
            continue
        old.negated = new.corrects = True
        new.link = "apart"
        layout.given_up.append((old, new))


def hear_ignored(layout: Layout) -> None:
    """Have what was found since take the place of a length that is to be ignored."""
    for old, new in zip(layout.figures, layout.figures[1:], strict=False):
        behind = layout.words(old.end, new.start)
        role = length_named(layout.words(max(0, old.start - 24), old.start) + behind[:14])
        if role is None or new.start - old.end > _IGNORED_FAR:
            continue
        ignored = _IGNORED.search(_ahead(layout, old)) or _IGNORED_BEHIND.search(behind)
        if not ignored or not _are_alike(old, new) or not _FOUND.search(behind.rstrip()):
            continue
        after = layout.after(new)
        if after is not None and after.link == "times":
            continue
        if length_named(behind[14:] + layout.words(new.end, new.end + 12)) not in (None, role):
            continue
        old.negated = new.corrects = True
        new.link = "apart"
        new.give(role, "changes")


def _ahead(layout: Layout, figure: Figure) -> str:
    """The words of its sentence before a figure, since the one before it."""
    begin = max(layout.sentence_start(figure.sentence), figure.start - _AHEAD)
    before = layout.before(figure)
    if before is not None:
        begin = max(begin, before.end)
    return " ".join(layout.words(begin, figure.start).split()) + " "


def _are_alike(old: Figure, new: Figure) -> bool:
    a, b = old.number.value, new.number.value
    if not a or a == b or old.is_gauge != new.is_gauge:
        return False
    return old.is_gauge or _LEAST < b / a < _MOST
