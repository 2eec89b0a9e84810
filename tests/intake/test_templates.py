"""The owner's own wording: what may be changed, and how a slip in it is told."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from bendreply.intake.template_check import check_templates
from bendreply.intake.templates import BadTemplate, Templates, default_templates

ANSWER = """+++
title = "Engraving"
phrases = ["can you engrave a name"]
source = "house answer"
approved_by = "Pat"
approved_on = 2026-09-01
review_by = 2027-09-01
+++

Yes, {{ shop.name }} engraves.
{{ shop.nmae }}
"""


def shop_folder(tmp_path: Path, **files: str) -> Path:
    """A shop folder whose reply_templates hold ``files``; '__' in a name stands for '/'."""
    for name, text in files.items():
        path = tmp_path / "reply_templates" / name.replace("__", "/")
        path = path.with_suffix(".md" if "answers" in path.parts else ".j2")
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return tmp_path


def test_our_own_templates_are_fit_for_use() -> None:
    assert check_templates(None) == []


def test_a_shop_folder_without_templates_uses_ours(tmp_path: Path) -> None:
    assert check_templates(tmp_path) == []
    assert Templates(tmp_path).text("stock.j2") == default_templates().text("stock.j2")


def test_a_shops_own_file_replaces_only_that_file(tmp_path: Path) -> None:
    templates = Templates(shop_folder(tmp_path, stock="Our own words for {{ first_name }}."))
    assert templates.render("stock.j2", {"first_name": "Ada"}) == "Our own words for Ada.\n"
    assert templates.text("ask.j2") == default_templates().text("ask.j2")


def test_a_shops_own_answer_joins_ours(tmp_path: Path) -> None:
    good = ANSWER.replace("{{ shop.nmae }}\n", "")
    templates = Templates(shop_folder(tmp_path, answers__engraving=good))
    names = {answer.name for answer in templates.answers}
    assert {"engraving", "wall-factor"} <= names
    assert check_templates(tmp_path) == []


def test_every_template_begins_with_its_list_of_variables() -> None:
    for file in default_templates().files(".j2"):
        text = default_templates().text(file) or ""
        assert text.startswith("{#"), file
        assert "Variables" in text.split("#}")[0], file


def test_every_answer_names_its_source_and_who_approved_it() -> None:
    answers = default_templates().answers
    assert len(answers) >= 10
    for answer in answers:
        assert answer.source
        assert answer.approved_by
        assert answer.review_by > answer.approved_on


def test_a_missing_variable_is_an_error_that_names_template_line_and_variable() -> None:
    with pytest.raises(BadTemplate) as told:
        default_templates().render("stock.j2", {})
    assert str(told.value) == ("reply_templates/stock.j2, line 4: there is no variable 'sizes'.")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Hello {{ first_nam }}", "stock.j2: there is no variable 'first_nam'."),
        ("Hello\n{% if first_name %}", "stock.j2, line 2: "),
        ("{{ sizes[0].wall_factr }}", "stock.j2, line 1: 'size' has no 'wall_factr'."),
        ("\n\n{{ sizes[7].summary }}", "stock.j2, line 3: unknown variable: "),
        ("{% include 'nothing.j2' %}", "stock.j2: there is no template 'nothing.j2'."),
        ("{{ ''.__class__.__mro__ }}", "stock.j2, line 1: "),
        ("{{ sizes[0] + 1 }}", "stock.j2, line 1: it can't be filled in: "),
        ("{{ 1 / 0 }}", "stock.j2, line 1: it can't be filled in: "),
        (" \n{# nothing #}\n", "stock.j2: it gives a reply without a word."),
        # Slips that would hang or fill the memory: each ends in a sentence, soon.
        (
            "{% for a in range(99999) %}\n{% for b in range(99999) %}{% endfor %}{% endfor %}",
            "stock.j2, line 2: it can't be filled in: it takes more than 100000 turns",
        ),
        (
            "{% macro twice(n) %}{% if n %}{{ twice(n - 1) }}{{ twice(n - 1) }}{% endif %}"
            "{% endmacro %}{{ twice(60) }}",
            "stock.j2, line 1: it can't be filled in: it takes more than 100000 turns",
        ),
        (
            "{% for a in range(99999) %}a long line of words{% endfor %}",
            "stock.j2: it can't be filled in: it gives more than 1048576 characters",
        ),
        ("{{ 'x' * 10 ** 12 }}", "stock.j2, line 1: it can't be filled in: it repeats "),
        ("{{ 9 ** 9 ** 9 }}", "stock.j2, line 1: it can't be filled in: a power of "),
        ("{% include 'stock.j2' %}", "stock.j2: it can't be filled in: it includes "),
    ],
)
def test_a_slip_in_a_shops_template_is_told_in_one_sentence(
    tmp_path: Path, text: str, told: str
) -> None:
    faults = [str(fault) for fault in check_templates(shop_folder(tmp_path, stock=text))]
    assert len(faults) == 1
    assert faults[0].startswith(f"reply_templates/{told}")
    assert "\n" not in faults[0]
    assert faults[0].endswith(".")


def test_a_file_for_a_folder_and_a_folder_for_a_file_are_told(tmp_path: Path) -> None:
    (tmp_path / "a" / "reply_templates" / "ask.j2").mkdir(parents=True)
    (told,) = check_templates(tmp_path / "a")
    assert str(told) == "reply_templates/ask.j2: it is a folder, not a file."
    (tmp_path / "b").mkdir()
    (tmp_path / "b" / "reply_templates").write_text("Hello")
    (told,) = check_templates(tmp_path / "b")
    assert str(told) == "reply_templates: it is a file, not a folder with templates in it."


def test_loops_know_their_length_and_place() -> None:
    counted = "{% for a in 'xyz' %}{{ loop.index }}/{{ loop.length }} {% else %}none{% endfor %}"
    template = Templates().environment.from_string(counted)
    assert template.render() == "1/3 2/3 3/3 "


def test_a_slip_in_a_rare_branch_is_found(tmp_path: Path) -> None:
    rare = "{% if unread == 'missing attachment' and not sizes %}{{ shop.fax }}{% endif %}x"
    faults = check_templates(shop_folder(tmp_path, **{"no-size": rare}))
    assert ["fax" in str(fault) for fault in faults] == [True]


def test_a_slip_in_an_answers_text_names_the_files_own_line(tmp_path: Path) -> None:
    faults = check_templates(shop_folder(tmp_path, answers__engraving=ANSWER))
    assert [str(fault) for fault in faults] == [
        "reply_templates/answers/engraving.md, line 11: 'shop' has no 'nmae'."
    ]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Just text.", "must begin with a block of settings"),
        (ANSWER.replace('"Pat"', "Pat"), "settings can't be read"),
        (ANSWER.replace("review_by", "reviw_by"), "setting 'review_by': field required"),
        (ANSWER.replace("2027-09-01", '"soon"'), "setting 'review_by'"),
        (
            ANSWER.replace("review_by", 'must = ["wiper"]\nreview_by'),
            "setting 'must': there is no setting of that name",
        ),
        (ANSWER.split("\n\n")[0], "no text after its settings"),
        (ANSWER.replace("can you engrave a name", "is it"), "no word that tells it apart"),
        (ANSWER.replace("can you engrave a name", "what is wall factor"), "wall-factor.md"),
        (ANSWER.replace('["can you engrave a name"]', "[]"), "no phrases"),
    ],
)
def test_a_slip_in_an_answers_settings_is_told(tmp_path: Path, text: str, told: str) -> None:
    faults = [str(f) for f in check_templates(shop_folder(tmp_path, answers__engraving=text))]
    assert faults
    assert told in faults[0]


def test_a_file_that_no_reply_uses_is_told(tmp_path: Path) -> None:
    faults = check_templates(shop_folder(tmp_path, stok="Hello"))
    assert [str(f) for f in faults] == [
        "reply_templates/stok.j2: no reply uses a file of this name."
    ]


def test_a_file_that_another_template_includes_is_used(tmp_path: Path) -> None:
    folder = shop_folder(tmp_path, stock="{% include 'terms.j2' %}", terms="Our terms.")
    assert check_templates(folder) == []


def test_a_file_that_is_no_text_is_told(tmp_path: Path) -> None:
    shop_folder(tmp_path, stock="x")
    (tmp_path / "reply_templates" / "stock.j2").write_bytes(b"Gr\xfc\xdfe")
    assert [str(f) for f in check_templates(tmp_path)] == [
        "reply_templates/stock.j2: it is not UTF-8 text."
    ]


@pytest.mark.parametrize("file", ["../shop.toml", "/etc/passwd", "answers/../../shop.toml"])
def test_a_template_reads_nothing_outside_its_folder(tmp_path: Path, file: str) -> None:
    (tmp_path / "shop.toml").write_text("secret", encoding="utf-8")
    templates = Templates(shop_folder(tmp_path, stock=f"{{% include '{file}' %}}"))
    with pytest.raises(BadTemplate):
        templates.render("stock.j2", {})


def test_values_are_not_read_as_templates_nor_escaped() -> None:
    text = default_templates().environment.from_string("{{ said }}").render(said="{{ 7*7 }} <b>&")
    assert text == "{{ 7*7 }} <b>&"


def test_jinja_is_loaded_only_when_a_reply_is_filled_in() -> None:
    code = (
        "import sys, bendreply.intake.drafting, bendreply.intake.matching as m;"
        "from bendreply.intake.templates import default_templates;"
        "m.matcher(default_templates().answers).match('what is a wall factor?');"
        "sys.exit('jinja2' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
