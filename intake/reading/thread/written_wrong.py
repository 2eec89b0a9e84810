"""What was told wrongly in an earlier mail, and what it is: 'yesterday I put 2 mm wall and it's
1.5 mm'. The first figure is out, the second takes its place."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.length_named import length_named
from ..text.patterns import any_of

_SAID = late_pattern(
    r"\b"
    + any_of(
        "(?:i|we)(?:'d|'ve| had| have)? (?:accidentally |mistakenly |wrongly |just )?"
        "(?:put|wrote|written|said|told you|gave you|typed|stated|noted|listed|specified)",
        "(?:habe|hatte|haben|hatten|hab) (?:ich|wir) | (?:ich|wir) (?:habe|hatte|haben|hatten|hab)",
        "(?:schrieb|schrieben|nannte|nannten) (?:ich|wir) | (?:ich|wir) (?:schrieb|schrieben)",
        "(?:j['’]ai|j['’]avais|nous avons|nous avions|on a|on avait) (?:mis|écrit|indiqué|dit|noté"
        "|donné|marqué|précisé)",
        "(?:puse|pusimos|escribí|escribimos|dije|dijimos|indiqué|indicamos|anoté|di|dimos"
        "|he puesto|hemos puesto|había puesto|habíamos puesto)",
        "(?:ho|abbiamo|avevo|avevamo) (?:messo|scritto|detto|indicato|dato|segnato|riportato)",
        "(?:heb|had|hebben|hadden) (?:ik|we|wij) | (?:ik|we|wij) (?:heb|had|hebben|hadden)",
        "(?:schreef|schreven|zei|zeiden|noemde|noemden) (?:ik|we|wij)",
        "(?:ik|we|wij) (?:schreef|schreven|zei|zeiden)",
        # A colleague, whose inquiry somebody else goes on with.
        r"(?:he|she|they|[a-z]{2,12}) (?:wrote|said|put(?: down)?|told you|gave you|stated)",
        r"(?:er|sie|kollege|kollegin|[a-z]{2,12}) (?:schrieb|nannte|hatte|hat)",
        r"(?:il|elle|on|[a-zé]{2,12}) (?:a|avait) (?:mis|écrit|indiqué|dit|noté|donné|marqué)",
        "(?:puso|escribió|dijo|indicó|(?:ha|había) (?:puesto|escrito|dicho|indicado))",
        "(?:ha|aveva) (?:messo|scritto|detto|indicato|dato|segnato|riportato) | scrisse",
        r"(?:hij|zij|ze|[a-z]{2,12}) (?:schreef|zei|noemde|had|heeft)",
    )
    + r"\b[^.;:?!\d]{0,40}$"
)
_LENGTH = (
    r"(?:wall(?: thickness)?|od|o\.d\.|outside diameter|diameter|clr"
    r"|(?:bend |cent\w+ ?line )?radius"
    r"|rad|tube|wand(?:stärke)?|durchmesser|(?:biege)?radius|rohr|épaisseur|paroi|diamètre|rayon"
    r"|pared|espesor|diámetro|radio|parete|spessore|diametro|raggio|straal|buis|wanddikte)"
)
_BUT_IS = late_pattern(
    r"^[^.;:?!\d]{0,48}?(?:\b|,\s?)"
    + any_of(
        r"(?:and|but|when|while|though|where)? ?(?:it['’]?s|it is|its|that['’]?s|they['’]?re|it was"
        r"|it should(?:'ve| have)? (?:be|been|read|say)|should (?:be|have been|read|say)"
        r"|it (?:turns|turned|works|comes|came) out (?:to be|as|at)|the right (?:one|figure) is)",
        rf"(?:and|but|when|while|though)? ?(?:the )?(?:actual |real |correct |right )?{_LENGTH}"
        r" (?:is|was|should(?: have)? (?:be|been|read|say))",
        rf"(?:aber|und|doch)? ?(?:die|der|das)? ?{_LENGTH} (?:ist|beträgt|war)",
        rf"(?:mais|et|or)? ?(?:le |la |l['’])?{_LENGTH} (?:est|fait)",
        rf"(?:pero|y)? ?(?:el |la )?{_LENGTH} (?:es|mide)",
        rf"(?:ma|e|però)? ?(?:il |la |lo )?{_LENGTH} (?:è|misura)",
        rf"(?:maar|en)? ?(?:de )?{_LENGTH} is",
        r"(?:es|das|er|sie) (?:sind|ist|war|waren|beträgt|muss|müsste)(?: \w+)? ?",
        r"(?:richtig|tatsächlich|korrekt|in wirklichkeit) (?:sind|ist|wären|wäre)",
        r"(?:sind|ist) (?:aber|jedoch|richtig|tatsächlich|in wirklichkeit)",
        r"(?:c['’]est|ce sont|il s['’]agit (?:de|d['’])|c['’]était|en fait|en réalité)",
        r"(?:y|pero|cuando|aunque|en realidad)(?: en realidad)? (?:son|es|eran|era|debe ser"
        r"|debería ser|tiene que ser)",
        r"(?:ma|e|però|invece|mentre|in realtà)(?: invece| in realtà)? (?:sono|è|erano|era|deve"
        r" essere)",
        r"(?:het|dat) (?:is|zijn|was|moet|moest)(?: \w+)?",
        # What is there: 'maar in de werkplaats ligt', 'but on the rack there is'.
        r"(?:there['’]?s|there is|i (?:measured|measure|get)|it measures|liegt|messe ich|gemessen"
        r"|il y a|je mesure|hay|mido|mide|c['’]è|ho misurato|misura|ligt|staat|meet ik|gemeten)",
    )
    + r"(?: actually| really| in fact| only| just| aber| nur| doch| en fait| en realidad| in realtà"
    r"| maar| echt| eigenlijk| zijn| sein| wel)* ?(?:an?|the|about)?\s*$"
)
_AUXILIARY = late_pattern(
    r"\b(?:habe|hatte|haben|hatten|hab|heb|had|hebben|hadden) (?:ich|wir|ik|we|wij)\b"
    r"|\b(?:er|sie|kollege|kollegin|hij|zij|ze) (?:hat|hatte|had|heeft)\b"
    r"|\b(?:ich|wir|ik|we|wij) (?:habe|hatte|haben|hatten|hab|heb|had|hebben|hadden)\b"
)
_PARTICIPLE = late_pattern(
    r"\b(?:geschrieben|angegeben|genannt|gesagt|notiert|mitgeteilt|eingetragen|vermerkt"
    r"|durchgegeben|gezet|geschreven|gezegd|opgegeven|genoemd|vermeld|doorgegeven|ingevuld)\b"
)
"""'Ich habe 40 mm Rohr, das ist 1,5 dick' tells of no mistake."""
_LEAST, _MOST = Decimal("0.3"), Decimal("3.4")
"""So many times the wrong figure can the right one be."""
_FAR = 72


def hear_written_wrong(layout: Layout) -> None:
    """Deny the figure that was written, and have the one that it is take its place."""
    for wrong in layout.figures:
        right = layout.after(wrong)
        if right is None or not _is_put_right(layout, wrong, right):
            continue
        wrong.negated = True
        right.corrects = True
        right.link = "apart"
        role = length_named(layout.words(max(0, wrong.start - 24), right.start))
        if role is None:
            role = length_named(layout.words(right.end, right.end + 12))
        if right.role is None and role is not None:
            right.give(role, "cue")


def _is_put_right(layout: Layout, wrong: Figure, right: Figure) -> bool:
    if right.sentence != wrong.sentence or wrong.link == "times" or right.link == "times":
        return False
    following = layout.after(right)
    if following is not None and following.link == "times":
        return False
    if right.start - wrong.end > _FAR or wrong.number.value == right.number.value:
        return False
    value = wrong.number.value
    if not value or not _LEAST < right.number.value / value < _MOST:
        return False
    named = length_named(layout.words(right.end, right.end + 12))
    spoken_of = length_named(layout.words(max(0, wrong.start - 24), wrong.end + 16))
    if named is not None and spoken_of not in (None, named):
        return False  # "I wrote 57 radius and it's 38 OD"
    before = layout.before(wrong)
    begin = max(layout.sentence_start(wrong.sentence), wrong.start - _FAR)
    if before is not None:
        begin = max(begin, before.end)
    said = layout.words(begin, wrong.start).replace("\n", " ")
    between = layout.words(wrong.end, right.start).replace("\n", " ")
    if not _SAID.search(said) or not _BUT_IS.match(between):
        return False
    return not _AUXILIARY.search(said) or _PARTICIPLE.search(between) is not None
