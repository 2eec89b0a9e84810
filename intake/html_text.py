"""HTML mail to text, as far as a person would see it: hidden text dropped, tables kept as rows."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from .html_layout import MAX_COLUMNS, Cell, Lines, Table
from .html_style import Look, look_of, read_style

if TYPE_CHECKING:
    from selectolax.lexbor import LexborNode

_DROPPED = frozenset(
    "script style head title template svg math iframe object embed audio video canvas noembed"
    " noframes select textarea datalist map img meta link xml".split()
)
_BLOCKS = frozenset(
    "div section article header footer main nav aside address center form fieldset figure"
    " figcaption dl dt dd tr td th tbody thead tfoot caption details summary hgroup"
    " legend body html".split()
)
_LISTS = frozenset(("ul", "ol", "menu"))
_PARAGRAPHS = frozenset("p h1 h2 h3 h4 h5 h6 hr pre listing xmp plaintext".split())
_STRUCK = frozenset(("s", "strike", "del"))
_PREFORMATTED = frozenset(("pre", "listing", "xmp", "plaintext"))
# Programs that write every line as a paragraph without a margin.
_TIGHT_PARAGRAPH = re.compile(r"MsoNormal|MsoPlainText|MsoListParagraph")

_MAX_QUOTE_DEPTH = 20
_MAX_TABLE_DEPTH = 30
_MAX_TAG_DEPTH = 400
_MANY_TAGS = 800
_TAG = re.compile(r"<(/?)([a-zA-Z][a-zA-Z0-9]{0,20})[^<>]*>")
# Tags that never nest by themselves: empty ones, and those that the next of their kind closes.
_NOT_NESTING = frozenset(
    "br hr img meta link input area base col embed source wbr"
    " p li dt dd tr td th tbody thead tfoot colgroup option".split()
)

# Stands before a raised digit that follows a digit, until what follows the digits is known.
_RAISED = "\x01"
_RAISED_FRACTION = re.compile(r"\x01(?=\d{1,4} ?[/\u2044\u2215])")
_RAISED_DIGIT = re.compile(r"\x01(?=\d)")
_MANY_EMPTY_LINES = re.compile(r"\n{3,}")


def html_to_text(html: str) -> str:
    """The visible words of an HTML document or fragment; see ``html_words``."""
    return html_words(html)[0]


def html_words(html: str) -> tuple[str, list[str]]:
    """The visible words of an HTML document or fragment, and beside them those that are struck out,
    which are taken back. Never raises, whatever the markup.

    Blocks and <br> break lines; list items begin with "- "; a table row is one line, its cells
    separated by tabs, rowspans repeated and colspans padded so that columns stay aligned; what a
    blockquote holds is prefixed "> ". 1<sup>1</sup>/<sub>2</sub> becomes "1 1/2".
    """
    from selectolax.lexbor import LexborHTMLParser  # 14 ms: most mail has a plain part

    document = LexborHTMLParser(_shallow(html).encode("utf-8", "replace"))
    body = document.body
    if body is None:  # a frameset has none
        return "", []
    walker = _Walker()
    lines = walker.walk(body)
    text = "\n".join(lines)
    if _RAISED in text:
        text = _RAISED_FRACTION.sub(" ", text)
        text = _RAISED_DIGIT.sub("^", text).replace(_RAISED, "")
    struck = [" ".join(words.split()) for words in walker.struck]
    return _MANY_EMPTY_LINES.sub("\n\n", text), [words for words in struck if words]


class _Walker:
    """Goes through the tree with a stack of its own: 10,000 nested tags need no recursion."""

    def __init__(self) -> None:
        self.look = Look()
        self.sinks: list[Lines] = [Lines()]
        self.tables: list[Table] = []
        self.quote_depth = 0
        self.list_depth = 0
        self.struck: list[str] = []
        self.todo: list[LexborNode | Callable[[], None]] = []

    def walk(self, root: LexborNode) -> list[str]:
        todo = self.todo
        todo.append(root)
        while todo:
            item = todo.pop()
            if callable(item):
                item()
            elif item.is_text_node:
                self._text(item.text_content or "")
            elif item.is_element_node:
                self._enter(item)
        return self.sinks[0].finish()

    def _text(self, words: str) -> None:
        if not self.look.shows:
            return
        if self.look.struck:
            self.struck.append(words)
            words = " "
        if _RAISED in words:
            words = words.replace(_RAISED, "")
        if self.look.preformatted:
            self.sinks[-1].preformatted(words)
        else:
            self.sinks[-1].text(words)

    def _enter(self, node: LexborNode) -> None:
        tag = node.tag or ""
        if tag in _DROPPED:
            return
        attributes = node.attributes
        before = self.look
        if attributes:
            look = look_of(attributes, before)
            if look is None:
                return
            self.look = look
        if tag in _STRUCK:
            self.look = self.look._replace(struck=True)
        if tag in _PREFORMATTED:
            self.look = self.look._replace(preformatted=True)
        if self.look is not before:
            self.todo.append(partial(setattr, self, "look", before))
        self._open(tag, attributes)
        children = []
        child = node.first_child
        while child is not None:
            children.append(child)
            child = child.next
        children.reverse()
        self.todo += children

    def _open(self, tag: str, attributes: dict[str, str | None]) -> None:
        """What the start of an element does to the text, and what its end will do."""
        lines = self.sinks[-1]
        if tag == "br":
            if self.look.shows:
                lines.newline()
        elif tag == "p" and _TIGHT_PARAGRAPH.search(attributes.get("class") or ""):
            self._edge(lines.end_line)
        elif tag in _LISTS:
            self._edge(lines.end_line if self.list_depth else lines.gap)
            self.list_depth += 1
            self.todo.append(self._close_list)
        elif tag in _PARAGRAPHS:
            self._edge(lines.gap)
        elif tag == "li":
            lines.mark("- ")
            self.todo.append(partial(lines.mark, ""))
        elif tag == "blockquote":
            self._open_quote(attributes)
        elif tag == "table" and len(self.tables) < _MAX_TABLE_DEPTH:
            lines.end_line()
            self.tables.append(Table())
            self.todo.append(self._close_table)
        elif tag == "tr" and self.tables:
            self.tables[-1].rows.append([])
        elif tag in ("td", "th") and self.tables:
            self.sinks.append(Lines())
            spans = (_span(attributes, "colspan"), _span(attributes, "rowspan"))
            self.todo.append(partial(self._close_cell, *spans))
        elif tag == "sup" and lines.last_char.isdigit():
            # 10³ and a footnote mark must not read as one number with what stands before.
            lines.text(_RAISED)
        elif tag in _BLOCKS or tag == "table":
            if "gmail_signature" in (attributes.get("class") or "").split():
                self._signature(lines)
            self._edge(lines.end_line)

    def _edge(self, edge: Callable[[], None]) -> None:
        edge()
        self.todo.append(edge)

    def _close_list(self) -> None:
        self.list_depth -= 1

    def _signature(self, lines: Lines) -> None:
        """The mailer says here that a signature begins; say it as a plain-text mail would."""
        lines.end_line()
        if not any(line == "-- " for line in lines.lines[-3:]):
            lines.add("-- ")

    def _open_quote(self, attributes: dict[str, str | None]) -> None:
        lines = self.sinks[-1]
        lines.end_line()
        # An "increase indent" button also makes blockquotes, without a border and without a mark.
        cited = bool(attributes.get("type") or attributes.get("class") or attributes.get("cite"))
        indented_only = not cited and read_style(attributes.get("style") or "").no_border
        if indented_only or self.quote_depth >= _MAX_QUOTE_DEPTH:
            self._edge(lines.gap)
            return
        self.quote_depth += 1
        self.sinks.append(Lines())
        self.todo.append(self._close_quote)

    def _close_quote(self) -> None:
        quoted = self.sinks.pop().finish()
        self.quote_depth -= 1
        lines = self.sinks[-1]
        for line in quoted:
            lines.add(f"> {line}".rstrip() if line != "-- " else "> -- ")
        if quoted:
            lines.gap()

    def _close_cell(self, colspan: int, rowspan: int) -> None:
        cell_lines = self.sinks.pop()
        table = self.tables[-1]
        if not table.rows:
            table.rows.append([])
        lines = cell_lines.finish()
        table.rows[-1].append(Cell(lines, colspan, rowspan, cell_lines.holds_table))

    def _close_table(self) -> None:
        rendered = self.tables.pop().render()
        lines = self.sinks[-1]
        lines.holds_table = True
        for line in rendered:
            lines.add(line)


def _span(attributes: dict[str, str | None], name: str) -> int:
    """A colspan or rowspan as a browser takes it: a number, else 1, within bounds."""
    value = (attributes.get(name) or "").strip()[:4]
    if not (value.isascii() and value.isdigit()):
        return 1
    # rowspan="0" means "to the end of the table" (HTML Living Standard 4.9.11).
    number = int(value)
    if number == 0:
        return 9999 if name == "rowspan" else 1
    return min(number, MAX_COLUMNS) if name == "colspan" else number


def _shallow(html: str) -> str:
    """``html`` without the tags that lie deeper than any real mail nests them.

    The parser's time grows with the square of the depth: 100 kB of <div> take it a second.
    """
    if html.count("<") < _MANY_TAGS:
        return html
    depth = 0

    def keep(match: re.Match[str]) -> str:
        nonlocal depth
        name = match[2].lower()
        if name in _NOT_NESTING:
            return match[0]
        if match[1]:
            depth = max(0, depth - 1)
            return match[0] if depth < _MAX_TAG_DEPTH else " "
        depth += 1
        return match[0] if depth <= _MAX_TAG_DEPTH else " "

    return _TAG.sub(keep, html)
