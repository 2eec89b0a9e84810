"""What the sender says about a figure: not this one, about so much, at least, scratch that."""

from __future__ import annotations

import re

from .figures import Figure, Layout
from .roles import tokens_beside

_NOT = re.compile(
    r"\b(?:no longer (?:run|use|need|make|bend|want)|changed (?:it )?from|up from|down from|used to be|originally|formerly|previously|früher|bisher|not|isn't|isnt|wasn't|wasnt|aren't|instead of|rather than|nicht|kein|keine|pas|non|niet|no es|statt|anstatt|au lieu de|en vez de|invece di|in plaats van|ikke|inte|nie)\s*(?:the|a|an|our|my|those|of|in|de|di|den|die|das|le|la|les|el|il|of the|at|on a|on)?\s*(?:old\s)?$"
)
_PAST = re.compile(
    r"^\W{0,3}(?:wall |od |clr |ones? )?(?:(?:that )?(?:we|you|i) (?:quoted|made|sold|sent|bought|ordered|had)\b|from last|like last|last time|we had before|we used to)"
)
_LIMIT_BEFORE = re.compile(
    r"\b(?:no (?:tighter|smaller|less|more|larger|bigger|greater|thinner|thicker|lower|over) than|not (?:less|more|under|over|tighter|smaller|bigger|larger) than|at least|at most|minimum(?: of)?|min\.?|maximum(?: of)?|max\.?|less than|more than|greater than|smaller than|larger than|bigger than|tighter than|under|over|below|above|up to|down to|rated to|rated for|limited to|good for|as (?:tight|small|low|big|large) as|mindestens|höchstens|maximal|minimal|au moins|au maximum|minimo|massimo|almeno|mínimo|máximo|al menos|minstens|hoogstens|ten minste|maximaal|minimaal|anything (?:over|under|above|below)|>=?|<=?|≥|≤)\s*(?:(?:a|an|the|about|is|of|radius|clr|fi|ø|od|dia|diameter|tube|pipe|wall|r|:|=)\s*){0,3}$"
)
_LIMIT_AFTER = re.compile(
    r"^\W{0,2}(?:(?:mm|in|inch|od|wall|clr|radius)\s)?(?:min\b|minimum|max\b|maximum|or (?:more|less|larger|bigger|greater|smaller|tighter|better|so larger|up|under|over|above|below)|and (?:up|over|under|larger|above)|\+(?!\s?[/\d.,])|at (?:least|most|the (?:least|most|tightest))|oder (?:mehr|größer|kleiner)|ou plus|o más|o più|of meer|is the (?:minimum|maximum|tightest|smallest|least|most)|if possible|if you can)"
)
_HEDGE_BEFORE = re.compile(
    r"(?:\b(?:about|approx\.?|approximately|roughly|circa|ca\.?|maybe|perhaps|probably|possibly|i think|i believe|i guess|i'd guess|guessing|not sure|unsure|suppose|supposed to be|looks like|might be|could be|may be|somewhere near|somewhere around|close to|near|nearly|almost|nominally|ish|etwa|ungefähr|circa|rund|zirka|wohl|vermutlich|environ|peut-être|à peu près|sans doute|probablemente|alrededor de|aproximadamente|unos|circa|forse|probabilmente|ongeveer|waarschijnlijk|misschien|omkring|cirka|około)|~|\baround(?!\s(?:a|an|the|our|my)\b))\s*(?:it's|its|it is|is|a|an|the|of|that's|thats|that is|wall|od|clr|radius|at|to be|:|=)*\s*(?:a|an|the)?\s*$"
)
_HEDGE_AFTER = re.compile(
    r"""^\W{0,3}(?:mm|in|inch|"|wall|od|o\.d\.|clr|radius|thick|dia|diameter)?\.?\s*(?:\(\?\)|or so\b|ish\b|-ish\b|or thereabouts|i think\b|i believe\b|i guess\b|approx|give or take|probably|maybe\b|if i remember|if memory|from memory|as far as i (?:know|remember)|not sure|glaube ich|je crois|creo\b|credo\b|denk ik|more or less|-?ish\b|oder so|ungefähr|we think|we believe|we suppose|\(approx|\(about|\(not sure|\(i think|, i think|, maybe|, probably|, not sure)"""
)
_OWNED = re.compile(
    r"\b(?:(?:we|i|they|he) (?:already |still |only |also |just )*(?:have|got|own|bought|had|have got|make do with|made)|we've (?:already )?got|i've (?:already )?got|already (?:have|got|own|bought)|have already|we already|haben (?:wir )?(?:bereits|schon)|avons déjà|ya tenemos|abbiamo già|hebben (?:we )?al)\b"
)
_STILL = re.compile(r"\b(?:already|from you|run fine|runs fine|works? fine|still|schon|déjà|ya|già|al)\b")
_ONE = re.compile(
    r"^\W{0,2}(?:wall\s|mm\s|in\s|inch\s|od\s|\"\s?)?(?:ones?|mandrels?|dorn|mandrin|mandrino|doorn|version|tool|set)\b"
)
_WANTED = re.compile(
    r"\b(?:need|want|looking|quote|price|require|after|make|buy|order|like|please|brauchen|benötigen|suchen|bitte|cherchons|besoin|necesit\w+|serve|cerchiamo|nodig|zoeken|offer|supply)\b"
)
_CORRECTION = re.compile(
    r"\b(?:no wait|wait no|wait(?=,)|scratch that|strike that|correction|i meant|i mean\b|sorry(?=,| -|\.)|sorry\b(?=.{0,30}\b(?:is|it's|should|meant|wrong|not)\b)|my mistake|my bad|oops|whoops|edit:|typo|make that|make it|actually|should (?:be|have been|read|say)|should've been|ignore (?:that|the|my|what)|forget (?:that|the|what)|on second thought|nope|not .{1,18}, (?:it's|its|but)|p\.?\s?s\.?|korrektur|korrigiere|ich meine|ich meinte|entschuldigung|sondern|erratum|pardon|je voulais dire|plutôt|perdón|perdon|quiero decir|corrección|mejor dicho|anzi|scusate|volevo dire|correzione|intendevo|correctie|ik bedoel|excuus|instead)\b"
)
_AGAIN = re.compile(r"\bcorrection\b|\bp\.?s\b")


def listen(layout: Layout) -> None:
    """Mark figures as negated, hedged, limits, owned already, or correcting an earlier one."""
    for figure in layout.figures:
        before, after = _around(layout, figure)
        if _LIMIT_BEFORE.search(before) or _LIMIT_AFTER.match(after):
            figure.notes.append("limit")
        elif _NOT.search(before) or _PAST.match(after):
            figure.negated = True
        behind = _HEDGE_AFTER.match(after) and not _HEDGE_BEFORE.search(after + " ")
        if _HEDGE_BEFORE.search(before) or behind or after.lstrip().startswith(("(?)", "?)")):
            figure.notes.append("hedged")
    _owned(layout)
    _whole_chains(layout)
    _ours(layout)
    _owned_lines(layout)
    _capacity(layout)
    _corrections(layout)


def _around(layout: Layout, figure: Figure) -> tuple[str, str]:
    """Casefolded text of a few tokens on each side, within the sentence and up to a neighbour."""
    left, right = tokens_beside(layout, figure, 6, 6)
    for index in range(len(left) - 1, -1, -1):
        if left[index].number is not None:
            left = left[index + 1 :]
            break
    for index, token in enumerate(right):
        if token.number is not None:
            right = right[:index]
            break
    before = layout.text[left[0].start : figure.start] if left else ""
    end = right[-1].end if right else figure.end
    return " ".join(before.casefold().split()) + (" " if before[-1:].isspace() else ""), (
        layout.text[figure.end : end].casefold()
    )


def _owned(layout: Layout) -> None:
    """'We already have the .120 one': that figure asks for nothing."""
    for sentence in layout.by_sentence:
        text = layout.sentence_text(sentence)
        owned = _OWNED.search(text)
        if owned is None:
            continue
        start = layout.sentence_start(sentence)
        wanted = _WANTED.search(text, owned.end())
        _owned_before(layout, sentence, start, text, owned)
        for figure in layout.in_sentence(sentence):
            if figure.start - start < owned.start():
                continue
            if wanted is not None and figure.start - start > wanted.start():
                continue
            _, after = _around(layout, figure)
            if _ONE.match(after) or (_STILL.search(text) and not wanted and not _DIE.search(text)):
                figure.negated = True
            elif _mandrel_for(text, owned.end(), figure.start - start):
                # "the .120 one for our 1-3/4 die (6 CLR)": the die is still the one meant.
                if _DIE.search(text, owned.end()):
                    figure.context_only = True
                else:
                    figure.negated = True


_OURS = re.compile(
    r"\b(?:our|my|your|the old|the existing|the current|existing|current|unser|notre|nuestro|il nostro|onze)\s(?:\w+\s)?$"
)
_REPLACES = re.compile(r"\b(?:replac\w+|another|same|spare|again|duplicate|copy of|like)\b")
_OLD = re.compile(
    r"\b(?:the old (?:one|tube|mandrel|size|job)|old one|previously|last time|last order|last year|used to|before that|the previous)\b"
)
_LINE_OWNED = re.compile(
    r"\b(?:(?:we've|we have|i've|i have|got|have) (?:already )?(?:this|that|it|these|one)(?: one)? already|leave (?:it|that|this|these) (?:off|out)|(?:don't|do not) (?:need|want|quote) (?:it|that|this|these)|no need for (?:it|this|that)|skip (?:it|that|this)|already (?:have|got|covered|own)(?: (?:it|this|that|one))?\s*(?:$|[,.;)])|(?:haben|hab) (?:wir|ich) schon|brauchen wir nicht|ya (?:lo|la) tenemos|on l'a déjà|ce l'abbiamo già|hebben we al)"
)
_TOOL_OWNED = re.compile(
    r"\b(?:mandrels?|dorne?|mandrin|mandrino|mandril|doorn)\b[^.;]{0,12}\b(?:for|für|pour|per|para|voor)\b(?P<what>[^.;]{1,24}?)\s(?:we (?:already )?have|is here|haben wir|ist vorhanden|on a déjà|we've got|already have|hebben we|lo tenemos|ce l'abbiamo)\b"
)


def _ours(layout: Layout) -> None:
    """'Our 1.25 x .049 mandrel is fine', 'the old one was .120': not what is asked for now."""
    for sentence in layout.by_sentence:
        figures = layout.in_sentence(sentence)
        text = layout.sentence_text(sentence)
        start = layout.sentence_start(sentence)
        tool = _TOOL_OWNED.search(text)
        for figure in figures:
            if tool is not None and tool.start("what") <= figure.start - start < tool.end("what"):
                _drop(layout, figure)
        before, _ = _around(layout, figures[0])
        if _OURS.search(before) and not _REPLACES.search(text) and _ONE.match(_after_run(layout, figures)):
            for figure in [figures[0], *_rest_of_chain(figures)]:
                figure.negated = True
        elif _TODAY.search(text) and _before_but(layout, figures, text, start):
            continue
        elif _OLD.search(text[: max(0, figures[0].start - start)]) and _others(layout, sentence):
            for figure in figures:
                figure.context_only = True


def _whole_chains(layout: Layout) -> None:
    """'Already have the 1.5 x .095 mandrel', 'not 2 x .065': the whole size goes, not one figure."""
    for left, right in zip(layout.figures, layout.figures[1:], strict=False):
        if right.link == "times" and left.negated:
            right.negated = True
    for left, right in zip(reversed(layout.figures[:-1]), reversed(layout.figures), strict=False):
        if right.link == "times" and right.negated:
            left.negated = True


def _owned_lines(layout: Layout) -> None:
    """'Push handle 22 OD, 1.5 wall, 35 CLR, we've this one already': a line that is not wanted."""
    by_line: dict[int, list[Figure]] = {}
    for figure in layout.figures:
        by_line.setdefault(figure.line, []).append(figure)
    for figures in by_line.values():
        if len(figures) < 2:
            continue
        begin = layout.text.rfind("\n", 0, figures[0].start) + 1
        end = layout.text.find("\n", figures[-1].end)
        after = layout.text[figures[1].end : end if end >= 0 else len(layout.text)].casefold()
        if _LINE_OWNED.search(after) and not _WANTED.search(layout.text[begin:end].casefold()):
            for figure in figures:
                figure.negated = True


_TODAY = re.compile(r"\b(?:currently|at the moment|right now|these days|so far|today we|momentan|derzeit|zurzeit|actuellement|actualmente|attualmente|nu)\b")


def _before_but(layout: Layout, figures: list[Figure], text: str, start: int) -> bool:
    """'Currently I do 1.25 x .065, but now I need ...': what is done today is not asked for."""
    but = re.search(r"\b(?:but|aber|mais|pero|ma|maar)\b", text)
    if but is None or not any(f.start - start > but.start() for f in figures):
        return False
    for figure in figures:
        if figure.start - start < but.start():
            figure.negated = True
    return True


def _rest_of_chain(figures: list[Figure]) -> list[Figure]:
    rest = []
    for figure in figures[1:]:
        if figure.link not in ("times", "slash"):
            break
        rest.append(figure)
    return rest


def _after_run(layout: Layout, figures: list[Figure]) -> str:
    last = [figures[0], *_rest_of_chain(figures)][-1]
    return layout.text[last.end : last.end + 24].casefold()


def _others(layout: Layout, sentence: int) -> bool:
    """Whether another sentence holds figures, so that this one may be background."""
    return any(f.sentence > sentence and f.role != "noise" for f in layout.figures)


def _drop(layout: Layout, figure: Figure) -> None:
    """A value owned already, wherever it was named before."""
    for other in layout.figures:
        if other.number.value == figure.number.value and other.unit == figure.unit:
            other.negated = True


_FOR = re.compile(r"\b(?:for|für|fur|pour|para|per|voor|with)\b(?P<what>[^;.]{1,40})$")
_A_TOOL = re.compile(
    r"^[^;.,]{0,24}\b(?:mandrels?|one|dorne?|mandrin|mandrino|mandril|doorn|it|that)\b"
)


def _owned_before(
    layout: Layout, sentence: int, start: int, text: str, owned: re.Match[str]
) -> None:
    """'For R 135 we already have a mandrel': the figure before is owned, wherever it stands."""
    named = _FOR.search(text[: owned.start()])
    if named is None or not _A_TOOL.match(text[owned.end() :]):
        return
    for figure in layout.in_sentence(sentence):
        place = figure.start - start
        if named.start() <= place < owned.start():
            _drop(layout, figure)


_DIE = re.compile(r"\b(?:our|my|the|a|that|this)\s[^,;]{0,16}\b(?:die|dies|die set|former)\b")


def _mandrel_for(text: str, start: int, place: int) -> bool:
    """'have a mandrel for 1.5 x .095': everything after 'mandrel for' is what is owned."""
    found = re.search(
        r"\b(?:mandrels?|one|dorne?|ball mandrel|plug)\b[^,.;]{0,20}\b(?:for|in|für|pour|para|per|voor)\b",
        text[start:place],
    )
    return found is not None


_MACHINE = re.compile(
    r"\b(?:machine|bender|bending machine|capacity|press|maschine|biegemaschine|cintreuse|curvadora|dobladora|curvatubi|macchina|buigmachine|rated|can (?:do|take|bend|handle)|takes|handles|goes)\b"
)


def _capacity(layout: Layout) -> None:
    """'Our bender (max fi 76, wall 4)', 'the machine takes up to 2 in': what a machine can do."""
    for figure in layout.figures:
        if "limit" not in figure.notes:
            continue
        left, _ = tokens_beside(layout, figure, 12, 0)
        before = layout.text[left[0].start : figure.start].casefold() if left else ""
        if not _MACHINE.search(before):
            continue
        figure.role = "noise"
        for other in layout.in_sentence(figure.sentence):
            between = layout.text[figure.end : other.start]
            if other.start > figure.end and len(between) < 30:
                if ")" not in between and "(" in before:
                    other.role = "noise"


def _corrections(layout: Layout) -> None:
    """After 'no wait' a figure replaces the one of its role, until the paragraph ends."""
    correcting = False
    paragraph = -1
    sentences = sorted(layout.by_sentence)
    first_size: int | None = None
    for sentence in sentences:
        figures = layout.in_sentence(sentence)
        if figures[0].paragraph != paragraph:
            paragraph = figures[0].paragraph
            correcting = False
        text = layout.sentence_text(sentence)
        begin = layout.sentence_start(sentence)
        marks = list(_CORRECTION.finditer(text))
        # "Sorry I said .095, it should be .083": the mark that follows a figure is the one.
        later = [m for m in marks if any(f.start < begin + m.start() for f in figures)]
        found = next(iter(later or marks), None)
        start = figures[0].start
        if found is not None or _correction_before(layout, sentence, first_size):
            correcting = True
            start = begin + (found.start() if found is not None else 0)
        if correcting and first_size is not None:
            for figure in figures:
                if figure.start >= start:
                    figure.corrects = True
        elif found is not None:
            for figure in figures:
                if figure.start >= start and any(f.start < start for f in figures):
                    figure.corrects = True
        first_size = sentence if first_size is None else first_size


def _correction_before(layout: Layout, sentence: int, first_size: int | None) -> bool:
    """A correcting sentence without figures of its own: 'No wait. It is 1.75.'"""
    if first_size is None or sentence - 1 <= first_size:
        return False
    text = layout.sentence_text(sentence - 1)
    has_figures = bool(layout.in_sentence(sentence - 1))
    return not has_figures and len(text) < 120 and _CORRECTION.search(text) is not None
