"""What is other now than in an earlier quotation: 'you quoted 1.25 x .049 in April; they have
bumped the wall to .065'. The new figure takes the place of the old one."""

from __future__ import annotations

from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.length_named import length_named
from ..text.patterns import any_of
from ..text.roles import Role

_QUOTED = late_pattern(
    r"\b"
    + any_of(
        "(?:you|u|y'all|you guys)(?:'d|'ve| had| have| already)? (?:quoted|priced|offered|bid)",
        "(?:you|u)(?:'d| had)? (?:gave|sent|given) (?:me|us) (?:a|the|your)"
        " (?:\\w+ )?(?:number|price|quote|quotation|offer|figure)",
        "(?:your|the|that|our) (?:\\w+ )?(?:quote|quotation|offer|proposal)",
        "quoted (?:me|us|this|it|in|back|last)",
        "(?:ihr|sie|du)\\b(?:[^.?!\\n]|\\.\\d){0,60}\\bangeboten",
        "(?:euer|ihr|das) (?:\\w+ )?angebot",
        "habt (?:ihr )?uns\\b(?:[^.?!\\n]|\\.\\d){0,60}\\bangeboten",
        "(?:vous|tu)\\b(?:[^.?!\\n]|\\.\\d){0,30}\\b(?:chiffré|coté|proposé|devisé)e?s?",
        "(?:votre|le) (?:\\w+ )?(?:devis|offre)",
        "(?:nos|me) (?:cotizaron|cotizasteis|cotizó|ofertaron|presupuestaron|ofrecieron|pasaron)",
        "(?:su|vuestra|vuestro|la) (?:oferta|cotización|presupuesto)",
        "(?:ci|mi) (?:avete|aveva|avevate|ha) (?:quotato|offerto|preventivato|fatto)",
        "(?:vostra|sua|la) (?:offerta|quotazione) | vostro preventivo",
        "(?:hebben|hadden|heeft) (?:jullie|u)\\b"
        "(?:[^.?!\\n]|\\.\\d){0,60}\\b(?:aangeboden|geoffreerd)",
        "(?:jullie|u) (?:hebben|heeft|had|hadden)\\b"
        "(?:[^.?!\\n]|\\.\\d){0,60}\\b(?:aangeboden|geoffreerd)",
        "(?:jullie|uw|de) offerte",
    )
    + r"\b"
)
_LENGTH = any_of(
    "walls?(?: thickness)? | thickness | gauge | od | o\\.d\\. | diameter | radius | clr",
    "bend radius | tube | wand\\w* | durchmesser | biegeradius | épaisseur | paroi",
    "diamètre | rayon",
    "pared | espesor | diámetro | radio | spessore | parete | diametro | raggio",
    "wanddikte | straal",
)
_ARTICLE = r"(?:the |our |their |its |my |die |der |den |das |la |le |l['’]|el |lo |il |de |het )?"
_CHANGED = any_of(
    "bump\\w* | rais\\w+ | upped | upping | increas\\w+ | chang\\w+ | mov\\w+ | switch\\w+",
    "dropp\\w+ | reduc\\w+ | thinn\\w+ | thicken\\w* | stepp\\w+ | revis\\w+ | beefed",
    "went | gone | goes | going | grew | grown",
)
_IS_NOW = any_of(
    "(?:is|are|was|'s) now | now (?:is|are) | became | becomes | has become | will be now",
    "(?:ist|wird|beträgt) (?:jetzt|nun|nunmehr|neu) | passe(?:nt)? (?:désormais |maintenant )?à",
    "est (?:maintenant|désormais) | devient | pasa(?: ahora)? a(?: ser(?: de)?)? | ahora es",
    "es ahora | cambia a | sube a | baja a | diventa | passa(?: ora)? a | ora è | è ora | sale a",
    "wordt(?: nu)? | is nu | gaat naar",
)
_TO = (
    r"\b"
    + any_of(
        # "they bumped the wall to", "they have since gone up to", "the wall went up to"
        rf"{_CHANGED} {_ARTICLE}(?:{_LENGTH} )?(?:(?:up|down|out|over|back) )?to",
        rf"{_LENGTH} (?:has |have |had )?(?:since |just |been |now )*{_CHANGED}"
        " (?:(?:up|down|over) )?to",
        rf"{_LENGTH} {_IS_NOW}",
        rf"now,? (?:it['’]?s|its|it is|we['’]?re on|they['’]?re on|they want|{_ARTICLE}{_LENGTH}"
        "(?:['’]s| is| are| has to be| should be))",
        rf"(?:jetzt|nun|inzwischen|neuerdings|mittlerweile) (?:ist|wird|sind|haben wir|soll)"
        rf"(?: {_ARTICLE}{_LENGTH})?(?: auf)?",
        rf"(?:maintenant|désormais),? (?:c['’]est|{_ARTICLE}{_LENGTH} est)(?: de| en)?",
        rf"ahora,? (?:es|son|{_ARTICLE}{_LENGTH} (?:es|pasa a|será))(?: de)?",
        rf"(?:ora|adesso),? (?:è|sono|{_ARTICLE}{_LENGTH} (?:è|diventa|passa a|sarà))(?: di| da)?",
        rf"nu (?:is|wordt) (?:het|{_ARTICLE}{_LENGTH})",
        rf"{_ARTICLE}{_LENGTH} (?:auf|wurde auf|wird auf)",
    )
    + r"(?: a| an| the| auf| de)?[ :]*$"
)
_CHANGE = late_pattern(_TO)
_ADDS = late_pattern(
    r"\b(?:also|as well|too|another|both|each|still (?:want|need)|in addition|auch|zusätzlich|beide"
    r"|weitere[nr]?|aussi|également|en plus|les deux|chaque|también|además|otro|ambos|cada|anche"
    r"|inoltre|entrambi|un altro|ook|daarnaast|allebei|nog een)\b"
)
_LEAD = 70
_OF_ANOTHER = late_pattern(
    r"\b(?:old|other|another|previous|previously|last (?:year|time|month)|alte[nrs]?|andere[nrs]?"
    r"|ancien(?:ne)?|autre|viejo|otro|vecchi[oa]|altro|oude|andere)\b"
)


def hear_changed_since(layout: Layout) -> None:
    """Mark the figure that is new as one that puts the old one right."""
    for figure in layout.figures:
        if figure.index and not figure.negated and _is_changed(layout, figure):
            figure.corrects = True
            role = _role_named(layout, figure)
            if figure.role is None and role is not None:
                figure.give(role, "cue")  # "the wall went up to .065" is no limit
            if figure.link not in ("", "restate"):
                figure.link = "apart"


def _is_changed(layout: Layout, figure: Figure) -> bool:
    following = layout.after(figure)
    if figure.link == "times" or (following is not None and following.link == "times"):
        return False  # another tube: "now we need 1.5 x .065"
    begin = max(layout.sentence_start(figure.sentence), figure.start - _LEAD)
    before = layout.figures[figure.index - 1]
    lead = layout.words(max(begin, before.end), figure.start).replace("\n", " ")
    if not _CHANGE.search(lead) or layout.says(figure.sentence, _ADDS):
        return False
    if layout.says(figure.sentence, _OF_ANOTHER):
        return False
    earlier = layout.figures[: figure.index]
    tubes = {
        first.number.value
        for first, second in pairwise(earlier)
        if second.link == "times" and first.link != "times"
    }
    if len(tubes) != 1:
        return False
    return any(layout.says(sentence, _QUOTED) for sentence in range(figure.sentence + 1))


def _role_named(layout: Layout, figure: Figure) -> Role | None:
    """The length that the words which lead to the figure name, where they name one alone."""
    before = layout.figures[figure.index - 1]
    begin = max(layout.sentence_start(figure.sentence), figure.start - _LEAD, before.end)
    return length_named(layout.words(begin, figure.start))
