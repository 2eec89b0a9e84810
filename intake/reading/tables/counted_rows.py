"""Whether the words beside a table ask only for the rows that have a count: 'mandrels for all the
rows that have a quantity', 'rows without a quantity are for information'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.patterns import any_of, whole_words

_ROWS = any_of(
    r"rows? | lines? | items? | ones | those | sizes? | positions? | entries | zeilen? "
    r"| positionen",
    r"pos\.? | größen | rohren?n? | denen | lignes? | articles? | postes? | filas? | líneas? "
    r"| partidas?",
    r"las | los | righe | voci | quelle | posizioni | regels? | rijen | posities | maten",
)
_COUNT = any_of(
    r"q'?ty | quantit(?:y|ies) | numbers? | counts? | figures? | amounts? | menge | stückzahl "
    r"| anzahl",
    r"quantités? | qté | nombre | cantidad(?:es)? | número | quantità | numero | aantal(?:len)?",
)
_WITH = (
    r"(?:(?:that|which|where|i|we|you|there)(?:'ve)?\s)*(?:have|has|having|with|show|showing|is|contain"
    r"|bear|got|mit|eine?r?|avec|ont|con|tienen|llevan|hanno|che|que|qui|met|hebben)"
    r"(?:\s(?:an?|any|the|got|been|put|einer?|une|un|una|het|een|hanno|tienen|ont|llevan))*"
)
_COUNTED = late_pattern(
    rf"\b{_ROWS}\s{_WITH}\s{_COUNT}\b(?!\s(?:first|from|starting|in (?:bold|red|yellow|italics"
    r"|brackets|capitals)|per\b|of\b))"
)
"""'The rows that have a quantity'."""
_FILLED = late_pattern(
    rf"\b(?:where|wherever|wo|bei denen|dort wo|là où|donde|dove"
    rf"|waar)\s[^.;!?\n]{{0,24}}?{_COUNT}\s"
    r"(?:is|are|ist|steht|angegeben|eingetragen|est|está|è|staat)\b(?!\s(?:not|blank|empty|missing|leer"
    r"|nicht|vide|vacía|vuota|niet|leeg))"
)
"""'Only where a quantity is filled in'."""
_WANTED = whole_words(
    r"only | just | need\w* | want\w* | quot\w+ | pric\w+ | offer\w* | mandrels? | after | nur "
    r"| bitte",
    r"brauch\w+ | dorne? | anbiet\w* | angebot\w* | seulement | uniquement | besoin | mandrins? "
    r"| devis",
    r"chiffr\w+ | s[oó]lo | solamente | mandril(?:es)? | necesit\w+ | cotiz\w+ | soltanto "
    r"| mandrin[oi]",
    r"serv\w+ | offerta | alleen | doorn(?:en)? | graag | prijs\w*",
)
_NO_COUNT = late_pattern(
    rf"\b{_ROWS}\s(?:(?:that|which|where)\s)?(?:without|with no|have no|has no"
    rf"|with(?: an?)? (?:dash"
    r"|blank|empty)|ohne|mit (?:einem )?strich|sans|avec un tiret|sin|con (?:un )?guion|senza"
    r"|con (?:il"
    r"|un )?trattino|zonder|met (?:een )?streepje)"
    rf"(?:\s(?:an?|any|eine?|une?|una?|een))?(?:\s{_COUNT})?\b[^.;!?\n]{{0,24}}\b"
    r"(?:not (?:needed|wanted|required)|(?:need|needs|want) (?:no|nothing)|(?:are |is )?(?:only "
    r"|just )?for"
    r" (?:info\w*|reference)|(?:be |are )?(?:ignored?|skipped|left out)|nicht|entf[aä]ll\w*"
    r"|zur info\w*"
    r"|pas besoin|pour info\w*|no (?:hacen?|se necesitan?)|informativ[oa]s?|non serv\w+|niet nodig)"
)
"""'Rows without a quantity are for information only', 'rows with a dash need no mandrel'."""
_TURNED = whole_words(
    r"not | no | don'?t | without | also | as well | both | all the others | even | already "
    r"| nicht",
    r"ohne | auch | schon | pas | sans | aussi | déjà | sin | también | ya | non | senza | anche "
    r"| già",
    r"niet | zonder | ook | al | first | after(?:wards)? | later | zuerst | danach | d'abord "
    r"| primero",
)
_CLAUSE = late_pattern(r"[.;!?]\s|\n")


def asks_for_counted(text: str) -> bool:
    """Whether the words ask only for the rows of a list that have a count."""
    for clause in _CLAUSE.split(text.casefold()):
        words = " ".join(clause.split())
        if _NO_COUNT.search(words):
            return True
        counted = _COUNTED.search(words) or _FILLED.search(words)
        if counted and _WANTED.search(words) and not _TURNED.search(words):
            return True
    return False
