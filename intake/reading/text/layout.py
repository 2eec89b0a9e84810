"""Tokens laid out: sentences, lines and paragraphs numbered, figures collected and linked."""

from __future__ import annotations

from .figures import Figure, Layout
from .links import link_figures
from .patterns import word_set
from .tokens import Token

_ABBREVIATIONS = word_set(
    "approx aprox env ca max min no nr incl ext int ep sp dia mat matl qty zb bzw ggf inkl st ss s",
    "i e g ref dr mr mrs ms inc ltd co fig vs etc thk diam tel sch rad pos art abb din od id",
    "máx mín maxi mini diám durchm außendurchm aussendurchm innendurchm",
)


_BEGINS = word_set(
    """can could would will please need we i you what how looking quote do does is are thanks our my
    this it there if also bitte können könnten wir ich was wie brauchen pourriez pouvez nous je quel
    combien merci podrían pueden necesitamos cuánto potete quanto abbiamo kunt kunnen wat graag"""
)
"""Words that begin a sentence, and no word for a length."""


def lay_out(tokens: list[Token], text: str) -> Layout:
    """The layout of a text's tokens, each figure linked to the one before it."""
    layout = Layout(text, tokens, [], [], [], {}, {})
    sentence = line = paragraph = clause = item = 0
    for index, token in enumerate(tokens):
        layout.sentence_of.append(sentence)
        layout.line_of.append(line)
        first = layout.spans[sentence][0] if sentence in layout.spans else index
        layout.spans[sentence] = (first, index)
        figure = _figure(token, index, len(layout.figures))
        if figure is not None:
            figure.sentence, figure.line = sentence, line
            figure.paragraph, figure.clause, figure.item = paragraph, clause, item
            layout.figures.append(figure)
            layout.by_sentence.setdefault(sentence, []).append(figure)
        item += token.block == "item"
        clause += token.kind in ("line", "para") or token.text == ";"
        if token.kind == "para":
            sentence, line, paragraph = sentence + 1, line + 1, paragraph + 1
        elif token.kind == "line":
            line += 1
        elif (
            (token.text in ("!", "?") and not _in_bracket(tokens, index))
            or (token.text == "." and _ends_sentence(tokens, index, text))
            or (token.kind == "cue" and token.text[-1:] == "." and _begins(tokens, index + 1, text))
        ):
            sentence += 1
    link_figures(layout)
    return layout


def _figure(token: Token, at: int, index: int) -> Figure | None:
    """The figure of a token that may measure something: no count, and not zero."""
    number = token.number
    if number is None or token.block == "count" or not (number.value or token.unit == "sch"):
        return None
    figure = Figure(
        at, index, token.start, token.end, number, token.unit, token.weak_unit,
        notes=list(token.notes),
    )  # fmt: skip
    if (token.unit or "").startswith("noise:"):
        figure.give("noise", "unit")
    return figure


def _in_bracket(tokens: list[Token], index: int) -> bool:
    """'.095 (?) wall': a mark of doubt, not the end of a sentence."""
    around = tokens[max(0, index - 1)], tokens[min(len(tokens) - 1, index + 1)]
    return tuple(token.text for token in around) == ("(", ")")


def _leads_on(tokens: list[Token], index: int) -> bool:
    """'CLR... 2.875': dots that lead from a label to its value."""
    first = last = index
    while first and tokens[first - 1].text == ".":
        first -= 1
    while last + 1 < len(tokens) and tokens[last + 1].text == ".":
        last += 1
    labelled = first > 0 and tokens[first - 1].kind in ("cue", "punct")
    return (
        labelled and last > first and last + 1 < len(tokens) and tokens[last + 1].number is not None
    )


def _ends_sentence(tokens: list[Token], index: int, text: str) -> bool:
    if _leads_on(tokens, index):
        return False
    if index + 1 < len(tokens) and tokens[index + 1].text == ":":
        return False  # "Biegeradius m.: 70"
    if index and tokens[index - 1].unit == "ga" and tokens[index + 1 : index + 2]:
        return tokens[index + 1].number is None  # "12 ga. 0.75 OD"
    if index and tokens[index - 1].text.strip(".") in _ABBREVIATIONS:
        after = tokens[index + 1] if index + 1 < len(tokens) else None
        limit = tokens[index - 1].text in ("max", "min") and index > 1
        if limit and after is not None and tokens[index - 2].number is not None:
            return text[after.start].isupper()  # "takes 2 inch max. Tube is 1.5"
        if _begins(tokens, index + 1, text) or _answers(tokens[index - 1], after, text):
            return True
        return after is None or after.kind in ("para", "line")
    return True


def _answers(token: Token, after: Token | None, text: str) -> bool:
    """'Los candeleros son rectos, esos no. Mi pregunta ...': behind a number's 'no.' stands it."""
    word = token.text == "no" and after is not None and after.text.isalpha()
    return word and after is not None and len(after.text) > 1 and text[after.start].isupper()


def _begins(tokens: list[Token], index: int, text: str) -> bool:
    """'... up to 80 mm OD. Need a mandrel for ...': no abbreviation has such a word behind it."""
    after = tokens[index] if index < len(tokens) else None
    begins = after is not None and after.text.split("'")[0] in _BEGINS
    return begins and after is not None and text[after.start].isupper()
