"""Sizes whose own words leave their material open: '2 x .083, 6 CLR, material not fixed yet'. They
take over no other size's."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures
from ..text.figures import Layout
from ..text.patterns import any_of
from .materials import MaterialMention

_MATERIAL = (
    r"(?:material|mat'?l|grade|alloy|werkstoff|güte|matière|matériau|nuance|materiale?|aleación"
    r"|lega|materiaal|legering)"
)
_BE = r"(?:is|are|to be|ist|wird|est|à|es|por|está|è|da|wordt|nog|sera|será|sarà|the|noch|yet)"
_OPEN = any_of(
    "tb[acd] | unknown | undecided | not (?:yet )?(?:fixed|decided|settled|known|chosen|confirmed)",
    "(?:confirmed|decided|settled|advised|determined|open)(?! by you)",
    "unbekannt | offen | unklar | (?:steht )?(?:noch )?nicht (?:fest|bekannt|entschieden|geklärt)",
    "(?:pas|non) (?:encore )?(?:définie?|décidée?|connue?|choisie?|fixée?)",
    "(?:définir|confirmer|préciser) | inconnue?",
    "(?:definir|confirmar|decidir|determinar) | (?:sin|no) (?:definir|decidir|decidido|definido)",
    "(?:definire|confermare|decidere|stabilire)",
    "non (?:ancora )?(?:definit|decis|not|stabilit)[oa]",
    "onbekend | niet (?:bekend|bepaald|besloten|gekozen) | open | bepalen | (?:te )?bevestigen",
    "folgt | follows | suit | volgt | segue | sigue",
)
_LEFT_OPEN = late_pattern(
    rf"\b{_MATERIAL}\s?[:=,-]?\s(?:still\s|aún\s|todavía\s|ancora\s)?"
    rf"(?:{_BE}\s){{0,3}}{_OPEN}(?![^\W_])"
)


def is_left_open(
    layout: Layout, groups: Sequence[Group], number: int, mentions: Sequence[MaterialMention]
) -> bool:
    """Whether the words behind a size, up to the next one, say that its material is open."""
    begins = [min((f.start for f in own_figures(group)), default=None) for group in groups]
    begin = begins[number]
    if begin is None:
        return False
    later = [start for start in begins if start is not None and start > begin]
    end = min(later, default=len(layout.text))
    said = _LEFT_OPEN.search(layout.text[begin:end].casefold())
    return said is not None and not any(begin <= m.start < end for m in mentions)
