"""HTML mail -> text: what a person would see in the browser, and nothing that was hidden.

Left the markup as mail programs write it, right the lines that must come out; written by hand.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.html_text import html_to_text, html_words

from ..pace import assert_quick

SEEN = [
    # -- lines
    ("<p>one<br>two</p><p>three</p>", "one\ntwo\n\nthree"),
    ("<div>one</div><div><br></div><div>two</div>", "one\n\ntwo"),
    ("<div>one<div>two</div>three</div>", "one\ntwo\nthree"),
    ("<p class=MsoNormal>one</p><p class=MsoNormal>two</p>", "one\ntwo"),
    ("1.75\n   OD  x <b>.095</b>\twall", "1.75 OD x .095 wall"),
    ("&Oslash;25 &times; 2&nbsp;mm &#8220;a&#8221; &frac34;&Prime;", "Ø25 × 2 mm “a” ¾″"),
    ("<p>&nbsp;&nbsp;Over its 2.00 GB</p>", "  Over its 2.00 GB"),
    ("<pre>Item   OD\n 1     1.500</pre>", "Item   OD\n 1     1.500"),
    ("<div style='white-space: pre-wrap'>a  b\nc</div>", "a  b\nc"),
    ("<ul><li>1.5</li><li>1.75<ul><li>.095</li></ul></li></ul>end", "- 1.5\n- 1.75\n- .095\n\nend"),
    ("<ol><li><p>one</p></li></ol>", "- one"),
    ("<p>one<p>two", "one\n\ntwo"),
    ('see <a href="https://example.org/x">print</a> <img src=a.png alt="9.99">', "see print"),
    # -- raised and lowered figures
    ("1<sup>1</sup>/<sub>2</sub> x .095", "1 1/2 x .095"),
    ("1<sup>3</sup>&frasl;<sub>4</sub>&Prime;", "1 3⁄4″"),
    ("1 <sup>1</sup>/<sub>2</sub>, 1-<sup>1</sup>/<sub>2</sub>", "1 1/2, 1-1/2"),
    # A footnote mark glued on would read 1.751.
    (
        "1.75<sup>1</sup> OD, 10<sup>3</sup> cycles, 40 mm<sup>2</sup>",
        "1.75^1 OD, 10^3 cycles, 40 mm2",
    ),
    ("the 1<sup>st</sup> of May", "the 1st of May"),
    # -- tables
    (
        "<table><tr><th>OD</th><th>Wall</th></tr><tr><td>1.75</td><td>.095</td></tr></table>",
        "OD\tWall\n1.75\t.095",
    ),
    (
        "<table><tr><td rowspan=2>304</td><td>1.5</td></tr><tr><td>1.75</td></tr>"
        "<tr><td>DOM</td><td>2</td></tr></table>",
        "304\t1.5\n304\t1.75\nDOM\t2",
    ),
    (
        "<table><tr><td colspan=2>Tube</td><td>Qty</td></tr>"
        "<tr><td>1.5</td><td>.065</td><td>2</td></tr></table>",
        "Tube\t\tQty\n1.5\t.065\t2",
    ),
    (
        "<table><tr><td>1</td><td></td><td>5.25</td></tr><tr><td>2</td><td>.095</td><td>6</td></tr>"
        "</table>",
        "1\t\t5.25\n2\t.095\t6",
    ),
    # A column that is empty all the way down is only there for its width.
    (
        "<table><tr><td>&nbsp;</td><td>OD</td><td></td><td>1.75</td></tr></table>",
        "OD\t1.75",
    ),
    (
        "<table><tr><td><p>1.75</p></td><td><div>.095<br>DOM</div></td></tr></table>",
        "1.75\t.095 DOM",
    ),
    (
        "<table><tr><td><table><tr><td>OD</td><td>1.75</td></tr>"
        "<tr><td>Wall</td><td>.095</td></tr></table></td></tr></table>",
        "OD\t1.75\nWall\t.095",
    ),
    (
        "<table><tr><td><table><tr><td>OD</td><td>1.75</td></tr></table></td></tr></table>",
        "OD\t1.75",
    ),
    (
        "<table><tr><td>Hello<br>I need 1.75<br>Lou</td><td></td></tr></table>",
        "Hello\nI need 1.75\nLou",
    ),
    (
        "<p>before</p><table><tr><td>a<td>b<tr><td>c<td>d</table>after",
        "before\n\na\tb\nc\td\nafter",
    ),
    # -- quoted mail
    (
        "<div>new</div><div class=gmail_quote><div class=gmail_attr>On Mon, Lou wrote:<br></div>"
        "<blockquote class=gmail_quote>old<br>1.5<blockquote>older</blockquote></blockquote></div>",
        "new\nOn Mon, Lou wrote:\n> old\n> 1.5\n> > older",
    ),
    (
        "<div class=moz-cite-prefix>On Mon, Lou wrote:<br></div><blockquote type=cite><p>a</p><p>b"
        "</p></blockquote><p>mine</p>",
        "On Mon, Lou wrote:\n> a\n>\n> b\n\nmine",
    ),
    (
        "<div>new</div><hr><div id=divRplyFwdMsg><b>From:</b> Lou<br><b>Sent:</b> Monday</div>",
        "new\n\nFrom: Lou\nSent: Monday",
    ),
    (
        '<blockquote style="margin:0 0 0 40px;border:none"><div>1.75</div></blockquote>',
        "1.75",
    ),
    ("<blockquote>in <table><tr><td>a<td>b</table></blockquote>", "> in\n> a\tb"),
    # -- signature
    (
        "hi<br><span>-- </span><br><div class=gmail_signature>Lou</div>",
        "hi\n-- \nLou",
    ),
    ("hi<div class='gmail_signature' dir=ltr>Lou</div>", "hi\n-- \nLou"),
]


@pytest.mark.parametrize(("html", "text"), SEEN, ids=[html[:40] for html, _ in SEEN])
def test_seen(html: str, text: str) -> None:
    assert html_to_text(html) == text
    assert html_to_text(f"<!DOCTYPE html><html><head></head><body>{html}</body></html>") == text


HIDDEN = [
    '<span style="display:none">9.99</span>',
    '<span style="DISPLAY: None !important">9.99</span>',
    '<span style="visibility:hidden">9.99</span>',
    '<span style="font-size:0">9.99</span>',
    '<span style="font-size: 0px; color: red">9.99</span>',
    '<span style="font-size:1px">9.99</span>',
    '<span style="opacity:0">9.99</span>',
    '<span style="color:#ffffff">9.99</span>',
    '<font color="white">9.99</font>',
    "<span hidden>9.99</span>",
    "<script>9.99</script>",
    "<style>p { width: 9.99px }</style>",
    "<!-- 9.99 -->",
    "<!--[if mso]><p>9.99</p><![endif]-->",
    "<title>9.99</title>",
    "<template>9.99</template>",
    '<div style="display:none"><table><tr><td>9.99</td></tr></table></div>',
]


@pytest.mark.parametrize("hidden", HIDDEN)
def test_hidden_text_is_not_read(hidden: str) -> None:
    assert html_to_text(f"<p>1.75 {hidden}x .095</p>").split() == ["1.75", "x", ".095"]


SHOWN = [
    '<div style="background:#000"><font color="white">1.75</font></div>',
    '<td bgcolor="#003366"><span style="color:#fff">1.75</span></td>',
    '<div style="font-size:0"><span style="font-size:14px">1.75</span></div>',
    '<div style="visibility:hidden"><b style="visibility:visible">1.75</b></div>',
    '<span style="font-size:0.9em">1.75</span>',
    '<span style="font-size:10px">1.75</span>',
    '<span style="opacity:0.9">1.75</span>',
    "<![if !mso]>1.75<![endif]>",
    "<o:p>1.75</o:p>",
]


@pytest.mark.parametrize("shown", SHOWN)
def test_what_only_looks_hidden_is_read(shown: str) -> None:
    assert html_to_text(f"<table><tr><td>{shown}</td></tr></table>") == "1.75"


@pytest.mark.parametrize("html", ["", "<", "<!--", "<frameset><frame></frameset>", "\0", "\ud800"])
def test_nothing_in_it(html: str) -> None:
    assert html_to_text(html).strip("<\ufffd?") == ""


@given(
    st.lists(
        st.sampled_from(
            "<table> <tr> <td rowspan=3> <td colspan=2> </table> <p> <li> <ul> </ul> <blockquote>"
            " </blockquote> <br> <sup> </sup> 1 / x <pre> \n <div style='display:none'> </div>"
            " <font color=white> &nbsp; <b> </td>".split(" ")
        )
    ).map("".join)
)
def test_any_markup_gives_clean_lines(html: str) -> None:
    text = html_to_text(html)
    assert text == text.strip("\n")
    assert "\n\n\n" not in text
    assert not [char for char in text if ord(char) < 32 and char not in "\n\t"]


@given(st.text(max_size=200))
def test_never_raises(html: str) -> None:
    html_to_text(html)


@pytest.mark.parametrize(
    "html",
    [
        "<div>" * 20_000 + "1.75",
        "<blockquote>" * 10_000 + "1.75",
        "<ul><li>" * 10_000 + "1.75",
        "<table><tr><td>" * 10_000 + "1.75",
        "<b>" * 10_000 + "1.75",
        "<table>" + "<tr><td rowspan=9999 colspan=99>" * 3_000 + "1.75",
    ],
    ids=["div", "blockquote", "li", "table", "b", "spans"],
)
def test_nesting_without_end_takes_no_time(html: str) -> None:
    """Measured: the parser alone takes a second for 100 kB of <div> left as they are."""
    assert html_to_text(html).endswith("1.75")
    assert_quick(lambda: html_to_text(html), within=1.0)


def test_a_long_mail_with_open_tags_keeps_its_rows() -> None:
    """</td> and </tr> may be left out (HTML Living Standard 13.1.2.4): no depth comes of it."""
    rows = "<tr><td>1.75<td>.095" * 2_000
    assert html_to_text(f"<table>{rows}</table>") == "\n".join(["1.75\t.095"] * 2_000)


@pytest.mark.parametrize(
    ("html", "words", "struck"),
    [
        ("<p>wall <s>.065</s> .083</p>", "wall .083", [".065"]),
        ("<p>CLR <strike>3</strike>4</p>", "CLR 4", ["3"]),
        ("<p>wall <del>.065</del><ins>.083</ins></p>", "wall .083", [".065"]),
        ('<p>R <span style="text-decoration:line-through">90</span> 120</p>', "R 120", ["90"]),
        ('<p>R <i style="text-decoration-line: line-through"><b>90</b></i> 120', "R 120", ["90"]),
        ("<ul><li><s>38 x 1.5</s></li><li>40 x 2</li></ul>", "- 40 x 2", ["38 x 1.5"]),
        ('<p>R <u style="text-decoration: underline">90</u></p>', "R 90", []),
        ('<p>R 90 <span style="display:none"><s>80</s></span></p>', "R 90", []),
    ],
)
def test_words_struck_out_are_kept_apart(html: str, words: str, struck: list[str]) -> None:
    assert html_words(html) == (words, struck)
