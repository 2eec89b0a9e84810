"""Sizes of a list that another sentence puts off, or strikes out, by naming them: 'Sizes: 2, 2.25,
2.5. The 2.25 we'd do later', 'customer dropped the 2.375'.

Nothing in that sentence may ask for them all the same, and the message may not count all of them.
"""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..counts.sizes_said import sizes_counted
from ..naming.likeness import restates
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words
from ..wanted.taken_back import TAKEN_BACK
from .dropped_words import strikes_out, without_leaving_out

_LATER = whole_words(
    r"(?:(?:we|i)(?:'d| would|'ll| will|'re going to)|(?:we|i) (?:plan|intend|hope) to)(?: probably"
    r"| maybe| only| just)? (?:do|order|get|buy|take|tackle|bend|need|want|make|look at|come back"
    r" (?:for|to)) ?(?:it |that |those |them )?(?:some time |sometime |much "
    r"|only )?(?:later(?: on)?"
    r"|another (?:time|day)|next (?:year|season)|some ?day|down the road|at a later (?:date|stage))"
    r"(?= ?(?:[.,;:!)]|$|and\b|maybe\b|so\b))",
    r"(?:is|are|would be|will be|comes?|come) (?:only |just |for |probably )*(?:later(?: on)?"
    r"|another"
    r" (?:time|day)|next (?:year|season)|some ?day|down the road|at a later (?:date|stage))"
    r"(?= ?(?:[.,;:!)]|$|and\b|maybe\b|so\b))",
    r"(?:machen|bestellen|brauchen|nehmen|kaufen|biegen"
    r"|bräuchten) wir (?:wohl )?(?:erst )?(?:später"
    r"|nächstes jahr|ein andermal)",
    r"(?:kommt|kommen|folgt|folgen|ist|sind) (?:wohl )?(?:erst )?(?:später"
    r"|nächstes jahr)(?: dran)?",
    r"(?:on|nous) (?:le |la |les )?(?:fera|ferons|prendra|prendrons|verra|verrons) (?:plus tard"
    r"|l'an"
    r" prochain|l'année prochaine)",
    r"(?:sera|seront|viendra|viendront|c'est|est|sont) (?:pour )?(?:plus tard|l'an prochain)",
    r"(?:lo |la |los |las )?(?:haremos|haríamos|pediremos|veremos|vendrá|queda|quedan|es"
    r"|son) (?:para )?"
    r"(?:más adelante|el año que viene|más tarde)",
    r"(?:lo |la |li |le )?(?:faremo|prenderemo|vedremo|ordineremo|verrà|è"
    r"|sono) (?:per )?(?:più avanti"
    r"|l'anno prossimo|più tardi)",
    r"(?:doen|bestellen|nemen|maken|buigen) we (?:pas )?(?:later|volgend jaar)",
    r"(?:komt|komen|is|zijn) (?:pas )?(?:later|volgend jaar)(?: aan de beurt)?",
)
ALL_THE_SAME = whole_words(
    r"quot\w+ | pric\w+ | offer\w* | cost\w* | but | now | also | both | all | each | too "
    r"| include\w*"
    r"| angebot\w* | preis\w* | anbiet\w* | aber | auch | beide | alle | jetzt | devis | prix "
    r"| mais"
    r"| aussi | tou[st] | maintenant | precio\w* | cotiz\w+ | pero | también | ambos | todos "
    r"| ahora"
    r"| prezz\w+ | offerta | preventiv\w+ | ma | anche | entrambi | tutti | adesso | prijs\w* "
    r"| offerte"
    r"| maar | ook | alle | nu",
    r"deliver\w* | ship\w* | liefer\w* | livr\w+ | entreg\w+ | consegn\w+ | lever\w+ | invoice\w* "
    r"| pay\w*",
    r"drawing\w* | zeichnung\w* | plans? | dies | bend die | wipers? | than | als | \d\W? die",
)
ASKS_FOR_ALL = late_pattern(
    r"(?=.*\b(?:quot\w+|pric\w+|offer\w*|cost\w*|need|want|order|tools|mandrels|angebot\w*|preis\w*"
    r"|anbiet\w*|brauch\w+|dorne|devis|prix|mandrins|precio\w*|cotiz\w+|mandriles|prezz\w+|offerta"
    r"|mandrini|mandrel|dorn|mandrin|mandril|mandrino|doorn|prijs\w*|offerte|doornen)\b)"
    r".*\b(?:both|all|each(?! of the)|apiece|je|jeweils|chacun\w*|cada|everything|together"
    r"|beide[nr]?|alle[ns]?|zusammen|les deux|tou[st]|ensemble|ambos"
    r"|todos?|juntos|entrambi|tutti|insieme|allebei|samen)\b",
)
"""A sentence on no size that asks for all of them."""
_POINTED_AT = late_pattern(
    r"\b"
    + any_of(
        r"the | das | den | die | der | le | la | les | el | los | il | lo | i | de | het | and "
        r"| und | et",
        r"y | e | en | for the | für das | pour le | para el | per il | voor de | size | grösse "
        r"| größe",
    )
    + r"\s(?:ø\s?)?$"
)
_CALLED = late_pattern(r"-?ern?\b")
"""'38er fällt weg': so a size is called, with no article before it."""
_MOST = 60
"""Of longer lists nobody says in prose which is for later."""


def left_by_name(layout: Layout, groups: Sequence[Group]) -> list[int]:
    """Indexes of the sizes that no sentence puts off or strikes out; all where that isn't plain."""
    everything = list(range(len(groups)))
    if not 1 < len(groups) <= _MOST:
        return everything
    gone: set[int] = set()
    struck: set[int] = set()
    naming: list[Figure] = []
    for sentence, figures in layout.by_sentence.items():
        words = " ".join(layout.sentence_text(sentence).casefold().replace("’", "'").split())
        later, out = _is_later(words), _is_struck(layout, figures)
        if "?" in words or not (later or out):
            continue
        named = _all_named(layout, figures, groups)
        if all(index is not None for index in named):
            gone |= {index for index in named if index is not None}
            struck |= gone if out else set()
            naming += figures
    kept = [index for index in everything if index not in gone]
    if not kept or not gone or not _is_plain(layout, groups, kept, naming):
        for index in struck:
            _doubt(groups[index])
        return everything
    for figure in naming:
        figure.put_off = True
    return kept


def _is_plain(
    layout: Layout, groups: Sequence[Group], kept: Sequence[int], naming: Sequence[Figure]
) -> bool:
    """Whether nothing speaks for all sizes, and no size left holds a figure that names another."""
    if len(groups) in sizes_counted(layout.text):
        return False
    held = {f.index for index in kept for figures in groups[index].slots.values() for f in figures}
    if held & {figure.index for figure in naming}:
        return False
    ours = {fs[0].sentence for group in groups for fs in group.slots.values()}
    ours |= {figure.sentence for figure in naming}
    others = (layout.sentence_text(sentence) for sentence in layout.spans if sentence not in ours)
    return not any(ASKS_FOR_ALL.search(" ".join(words.casefold().split())) for words in others)


def _doubt(group: Group) -> None:
    if not group.doubtful:
        group.doubtful = TAKEN_BACK
        group.notes += [(slot, TAKEN_BACK) for slot in group.slots]


def _is_later(words: str) -> bool:
    return _LATER.search(words) is not None and not ALL_THE_SAME.search(words)


def _is_struck(layout: Layout, figures: Sequence[Figure]) -> bool:
    """'Customer dropped the 2.375, so leave that one off the quote'."""
    begin = layout.sentence_start(figures[0].sentence)
    end = begin + len(layout.sentence_text(figures[0].sentence))
    parts = [begin, *(place for figure in figures for place in (figure.start, figure.end)), end]
    pieces = [layout.words(*span) for span in zip(parts[::2], parts[1::2], strict=True)]
    holes = " ".join("#".join(pieces).replace("’", "'").split())
    return strikes_out(holes) and not ALL_THE_SAME.search(without_leaving_out(holes))


def _all_named(
    layout: Layout, figures: Sequence[Figure], groups: Sequence[Group]
) -> list[int | None]:
    """Which size each figure names; in '2.375 x .120' the wall names what the OD does."""
    named: list[int | None] = []
    for figure in figures:
        last = groups[named[-1]] if named and named[-1] is not None else None
        beside = figure.link == "times" and last is not None
        if (
            beside
            and last is not None
            and any(_is_wall(f, figure) for f in last.slots.get("wall", ()))
        ):
            named.append(named[-1])
        else:
            named.append(_named(layout, figure, groups))
    return named


def _is_wall(held: Figure, figure: Figure) -> bool:
    return held is not figure and restates(held, figure)


def _named(layout: Layout, figure: Figure, groups: Sequence[Group]) -> int | None:
    """Which size a figure points at by its OD, said again; None where it is any other figure."""
    ahead = layout.words(max(0, figure.start - 24), figure.start).casefold()
    pointed = _POINTED_AT.search(ahead) or _CALLED.match(layout.words(figure.end, figure.end + 4))
    if figure.row is not None or not pointed:
        return None
    having = [
        index
        for index, group in enumerate(groups)
        if "od" in group.slots and restates(group.slots["od"][0], figure)
    ]
    if len(having) != 1 or groups[having[0]].slots["od"][0] is figure:
        return None
    return having[0]
