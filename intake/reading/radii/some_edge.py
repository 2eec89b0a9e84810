"""A radius to an edge of the tube that may be the inner or the outer one: 'R65 tot de rand van de
buis', 'innen oder außen, steht nicht da'. It is doubted; the inner edge is the likelier."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..text.roles import Role

_INNER = any_of(
    r"inside | inner | inn?en\w* | inner\w{2} | intérieure?s? | interne | intrados | interior",
    r"intern[oa] | dentro | binnen\w* | inwendig\w?",
)
_OUTER = any_of(
    r"outside | outer | au(?:ß|ss)en\w* | äu(?:ß|ss)ere\w? | extérieure?s? | externe | extrados",
    r"exterior | estern[oa] | fuera | buiten\w* | uitwendig\w?",
)
_SIDE = late_pattern(rf"\b(?:{_INNER}|{_OUTER})\b")
_EDGE = whole_words(
    "edge of (?:the )?(?:tube|pipe) | tube edge | pipe edge | rohrkante | rohrrand",
    "(?:kante|rand) (?:des|vom|von dem) rohre?s? | bords? du tube | bordes? del tubo",
    "bord[oi] del tubo | rand(?:en)? van de (?:buis|pijp) | buisrand",
)
_OR = r"[^.;!\d]{0,24}(?:\b(?:or|oder|ou|o|of)\b|[/?])[^.;!\d]{0,24}?"
_EITHER = late_pattern(rf"\b(?:{_INNER}\b{_OR}\b{_OUTER}|{_OUTER}\b{_OR}\b{_INNER})\b")
_UNSURE = whole_words(
    "not sure | unsure | unclear | can't tell | cannot tell | no idea | don't know | doesn't say",
    "weiß (?:ich |man )?(?:leider )?nicht | unklar | nicht (?:ganz )?(?:sicher|klar|erkennbar)",
    "keine ahnung | steht (?:leider )?nicht | (?:sieht|erkennt) man nicht | nicht zu erkennen",
    "geht nicht hervor | sais pas | sait pas | pas (?:sûre?|clair|précisé|indiqué)",
    "ne (?:le )?(?:précise|dit|voit) pas | aucune idée | comprends pas | no (?:lo )?s[eé]",
    "no (?:lo )?sabemos | no (?:se|lo) (?:ve|dice|indica|especifica) | no (?:está|queda) claro",
    "no (?:entiendo|indica|especifica|dice) | ni idea | non (?:lo )?(?:so|sappiamo|capisco)",
    "non si (?:capisce|vede|legge) | non è (?:chiaro|indicato|specificato) | non (?:lo )?dice",
    "non specifica | weet (?:ik )?(?:het )?niet | zie (?:je|ik) niet | onduidelijk",
    "niet (?:duidelijk|te zien|zeker) | staat (?:er )?niet | geen idee",
)
_FAR = 60
_LONGEST = 300
_RADII: tuple[Role, ...] = ("radius", "inside_r", "outside_r")
WHICH_EDGE = "inside or outside radius"


def doubt_edges(layout: Layout) -> None:
    """Doubts each radius to an edge that is not said to be the inner or the outer one."""
    for figure in layout.figures:
        if figure.role not in _RADII or any("radius" in note for note in figure.notes):
            continue
        if _to_some_edge(layout, figure) or _is_wondered(layout, figure):
            figure.role = "inside_r"
            figure.notes.append(WHICH_EDGE)


def _to_some_edge(layout: Layout, figure: Figure) -> bool:
    after = layout.after_in_sentence(figure)
    end = min(figure.end + _FAR, after.start if after is not None else len(layout.text))
    behind = layout.words(figure.end, end)
    return _EDGE.search(behind) is not None and _SIDE.search(behind) is None


def _is_wondered(layout: Layout, figure: Figure) -> bool:
    """'..., innen oder außen weiß ich nicht', in its sentence or in the next one."""
    for sentence in (figure.sentence, figure.sentence + 1):
        if sentence != figure.sentence and layout.in_sentence(sentence):
            continue
        said = layout.sentence_text(sentence)[:_LONGEST]
        if _EITHER.search(said) and _UNSURE.search(said):
            return True
    return False
