"""The command line as a person meets it: exit status, sentences, JSON lines."""

from __future__ import annotations

import io
import json
import subprocess
import sys
from pathlib import Path

import pytest

from bendreply.intake.cli import main

MAIL = """From: Ada Byrne <ada@example.com>
To: sales@example.org
Subject: {subject}
Date: Mon, 16 Nov 2026 10:00:00 -0500
Message-ID: <{number}@example.com>
Content-Type: text/plain; charset=utf-8

{body}
"""
STOCK = "Please quote a mandrel for 1.75 in OD x .095 wall DOM, 5.25 in CLR."


def mail(folder: Path, number: int, body: str = STOCK, subject: str = "Mandrel") -> Path:
    path = folder / f"{number}.eml"
    path.write_text(MAIL.format(number=number, body=body, subject=subject), encoding="utf-8")
    return path


@pytest.fixture(autouse=True)
def _no_shop_of_the_surroundings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    monkeypatch.setenv("COLUMNS", "100")


@pytest.fixture
def shop(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> str:
    """A shop folder of one's own, as ``shop new`` makes it."""
    folder = str(tmp_path / "shop")
    assert main(["shop", "new", folder]) == 0
    capsys.readouterr()
    return folder


class TestCalls:
    def test_help_and_version(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["--help"]) == 0
        out = capsys.readouterr().out
        commands = (
            "demo read answer collect backlog show correct approve set-aside deliver report shop "
            "score schema"
        )
        for command in commands.split():
            assert f"\n    {command} " in out or f"\n    {command}\n" in out
        assert main(["--version"]) == 0
        assert capsys.readouterr().out.startswith("bendreply ")

    def test_a_wrong_call_is_two(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main([]) == 2
        assert main(["reed"]) == 2
        assert main(["approve", "1"]) == 2
        err = capsys.readouterr().err
        assert err.splitlines()[-1] == (
            "bendreply: the following arguments are required: --by (see `bendreply approve --help`)"
        )

    def test_starting_up_imports_nothing_heavy(self) -> None:
        heavy = "{'pydantic', 'pint', 'sqlalchemy', 'alembic', 'rich', 'jinja2', 'email'}"
        code = (
            "import sys; from bendreply.intake.cli import main; main(['--help']); "
            f"sys.exit(bool({heavy} & set(sys.modules)))"
        )
        done = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
        assert done.returncode == 0

    @pytest.mark.parametrize("call", [["schema"], ["answer", STOCK]])
    def test_a_reader_that_stops_early_is_no_error(self, call: list[str]) -> None:
        code = f"import sys; from bendreply.intake.cli import main; sys.exit(main({call!r}))"
        with subprocess.Popen(
            [sys.executable, "-c", code], stdout=subprocess.PIPE, stderr=subprocess.PIPE
        ) as process:
            assert process.stdout is not None
            assert process.stderr is not None
            process.stdout.close()
            assert process.stderr.read() == b""
            assert process.wait() == 0


class TestRead:
    def test_one_object_a_line_in_the_order_given(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        paths = [str(mail(tmp_path, n)) for n in (2, 1)]
        assert main(["read", "--json", *paths]) == 0
        lines = [json.loads(line) for line in capsys.readouterr().out.splitlines()]
        assert [line["file"] for line in lines] == paths
        assert [line["message_id"] for line in lines] == ["2@example.com", "1@example.com"]
        (request,) = lines[0]["requests"]
        # 1.75 x 25.4 and .095 x 25.4
        assert (request["od_mm"], request["wall_mm"]) == (44.45, 2.413)
        assert request["decision"] == "stock"
        for evidence in request["evidence"]:
            text = lines[0]["text"]
            assert text[evidence["start"] : evidence["end"]] == evidence["surface"]

    def test_it_goes_on_past_what_cannot_be_read(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        missing, empty = tmp_path / "gone.eml", tmp_path / "none"
        empty.mkdir()
        good = mail(tmp_path, 1)
        assert main(["read", "--json", str(missing), str(empty), str(good)]) == 1
        out, err = capsys.readouterr()
        assert json.loads(out)["file"] == str(good)
        assert err.splitlines() == [
            f"bendreply: {missing}: there is no such file",
            f"bendreply: {empty}: no .eml file lies in this folder",
        ]

    def test_our_own_fault_with_one_message_does_not_stop_the_rest(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        from bendreply.intake import pipeline

        real = pipeline.read

        def breaks_on_the_first(own, message):  # type: ignore[no-untyped-def]
            if message.message_id == "1@example.com":
                raise RuntimeError("planted")
            return real(own, message)

        monkeypatch.setattr(pipeline, "read", breaks_on_the_first)
        first, second = mail(tmp_path, 1), mail(tmp_path, 2)
        assert main(["read", "--json", str(first), str(second)]) == 1
        out, err = capsys.readouterr()
        assert [json.loads(line)["file"] for line in out.splitlines()] == [str(second)]
        assert err == (f"bendreply: {first}: internal fault (RuntimeError: planted); left out\n")

    def test_the_table_shows_figures_ratios_and_the_answer(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        assert main(["read", str(mail(tmp_path, 1))]) == 0
        out = capsys.readouterr().out
        # wall factor 1.75 / .095 = 18.42; D of bend 5.25 / 1.75 = 3
        for words in ("Ada Byrne", "1.75 × 0.095 × 5.25 in", "44.45 × 2.413 × 133.35 mm",
                      "carbon steel, DOM", "18.42", "from stock"):  # fmt: skip
            assert words in out

    def test_a_customers_text_is_neither_markup_nor_terminal_control(
        self, capsys: pytest.CaptureFixture[str]
    ) -> None:
        body = "Can you [red]bend[/red] \x1b[2J 1.75 x .095 DOM on 5.25 clr \u202e?"
        assert main(["answer", body]) == 0
        out = capsys.readouterr().out
        assert "\x1b" not in out
        assert "\u202e" not in out

    def test_why_follows_each_message(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        (tmp_path / "1.eml").write_text("From: a@example.com\n\n1.5 x .065, 4.5 clr\n", "utf-8")
        (tmp_path / "2.eml").write_text("From: a@example.com\n\nDo you polish?\n", "utf-8")
        assert main(["read", "--why", str(tmp_path)]) == 0
        out = capsys.readouterr().out
        assert out.index("1.eml") < out.index("why: body") < out.index("2.eml")
        assert "There is no number in it." in out.partition("2.eml")[2]


class TestAnswer:
    def test_reading_decision_and_draft(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["answer", "mandrel for 2 x .049 wall 304, 6 clr please"]) == 0
        out = capsys.readouterr().out
        # wall factor 2 / .049 = 40.82
        assert "Decline, wall factor 40.82, D of bend 3" in out
        assert "“.049”" in out
        assert "Subject: Re: your enquiry" in out

    def test_standard_input_and_json(
        self, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr(sys, "stdin", io.StringIO("1.75 x .095 DOM mandrel on a 5.25 clr"))
        assert main(["answer", "--json"]) == 0
        out = json.loads(capsys.readouterr().out)
        assert (out["file"], out["kind"]) == ("-", "sizes")

    def test_nothing_to_answer(
        self, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr(sys, "stdin", io.StringIO(" \n"))
        assert main(["answer"]) == 1
        assert capsys.readouterr().err == (
            "bendreply: there is no text to answer: give it as TEXT or on standard input\n"
        )

    def test_why_tells_each_number_and_what_else_was_weighed(
        self, capsys: pytest.CaptureFixture[str]
    ) -> None:
        assert main(["answer", "--why", "mandrel for 15/8 x .083, 5 clr, call 330-555-0145"]) == 0
        told = capsys.readouterr().out.partition("why: body")[2]
        assert "1.875 in (0.6)" in told
        assert "“call 330-555-0145”  phone" in told
        assert "best  1.625" in told
        assert "?     1.875" in told

    def test_why_or_json_not_both(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["answer", "--why", "--json", "2 x .065"]) == 2
        assert "not allowed with" in capsys.readouterr().err

    def test_the_schema_is_printed(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["schema"]) == 0
        assert json.loads(capsys.readouterr().out)["title"] == "MessageOut"


class TestShop:
    def test_new_and_check(self, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
        folder = tmp_path / "mine"
        assert main(["shop", "new", str(folder)]) == 0
        assert (folder / "shop.toml").is_file()
        assert main(["shop", "check", str(folder)]) == 0
        assert f"{folder} is fit for use: " in capsys.readouterr().out
        assert main(["shop", "new", str(folder)]) == 2
        assert "is not empty" in capsys.readouterr().err

    def test_every_fault_is_named(self, shop: str, capsys: pytest.CaptureFixture[str]) -> None:
        catalogue = Path(shop) / "catalogue.csv"
        header, first, *rest = catalogue.read_text(encoding="utf-8").splitlines()
        broken = first.replace(first.split(",")[2], "5 in", 1)
        catalogue.write_text("\n".join([header, broken, *rest]) + "\n", encoding="utf-8")
        toml = Path(shop) / "shop.toml"
        toml.write_text(
            toml.read_text(encoding="utf-8").replace("value = 30", "value = 'thirty'"),
            encoding="utf-8",
        )
        for call in (["shop", "check"], ["read", "any.eml"], ["backlog"]):
            assert main(["--shop", shop, *call]) == 2
            err = capsys.readouterr().err
            assert "shop.toml, line" in err
            assert "catalogue.csv, row 2, column tube_wall" in err

    def test_a_broken_part_of_the_replies_is_named_beside_faults_of_the_settings(
        self, shop: str, capsys: pytest.CaptureFixture[str]
    ) -> None:
        toml = Path(shop) / "shop.toml"
        settings = toml.read_text(encoding="utf-8")
        (Path(shop) / "reply_templates").mkdir()
        (Path(shop) / "reply_templates" / "parts.j2").write_text("{% if %}\n", encoding="utf-8")
        for spelling, told in (
            ('"texan"', "'texan' is not one of 'american' or 'british'"),
            ("texan", "invalid value: text is written in quotes"),
        ):
            toml.write_text(
                settings.replace('spelling = "american"', f"spelling = {spelling}"),
                encoding="utf-8",
            )
            assert main(["shop", "check", shop]) == 2
            first, second = capsys.readouterr().err.splitlines()
            assert first.endswith(f", key spelling: {told}")
            assert second.startswith("bendreply: reply_templates/parts.j2, line 1: ")

    def test_a_broken_reply_template_is_a_fault_of_the_shop(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        own = Path(shop) / "reply_templates"
        own.mkdir()
        (own / "stock.j2").write_text("Hello {{ nobody_knows_this }}\n", encoding="utf-8")
        assert main(["--shop", shop, "shop", "check"]) == 2
        assert capsys.readouterr().err == (
            "bendreply: reply_templates/stock.j2: there is no variable 'nobody_knows_this'.\n"
        )
        assert main(["--shop", shop, "read", str(mail(tmp_path, 1))]) == 2
        assert "reply_templates/stock.j2, line 1" in capsys.readouterr().err

    def test_a_folder_that_is_not_there(self, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["--shop", "nowhere", "backlog"]) == 2
        assert capsys.readouterr().err == "bendreply: nowhere: there is no such shop folder\n"

    def test_the_environment_names_the_shop(
        self, shop: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setenv("BENDREPLY_SHOP", shop)
        assert main(["shop", "check"]) == 0
        assert shop in capsys.readouterr().out


class TestDesk:
    def test_the_sample_shop_keeps_no_store(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        assert main(["collect", str(mail(tmp_path, 1))]) == 2
        assert capsys.readouterr().err == (
            "bendreply: the sample shop keeps no store: make a shop folder with "
            "`bendreply shop new DIR` and name it with --shop DIR, or name a store with "
            "--store FILE\n"
        )
        store = str(tmp_path / "a.sqlite")
        assert main(["collect", "--store", store, str(mail(tmp_path, 1))]) == 0

    def test_what_is_known_is_not_read_again(
        self,
        shop: str,
        tmp_path: Path,
        capsys: pytest.CaptureFixture[str],
        monkeypatch: pytest.MonkeyPatch,
    ) -> None:
        from bendreply.intake import pipeline

        mail(tmp_path, 1)
        call = ["--shop", shop, "collect", str(tmp_path)]
        assert main(call) == 0
        read = []
        whole = pipeline.understand
        monkeypatch.setattr(
            pipeline,
            "understand",
            lambda message, answers: [read.append(1), whole(message, answers)][1],
        )
        assert main(call) == 0
        assert read == []
        mail(tmp_path, 2)
        assert main(call) == 0
        assert read == [1]
        capsys.readouterr()

    def test_a_long_folder_is_taken_in_whole_and_copies_in_it_once(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        for number in range(1, 24):  # more than are written down at a time, and a rest
            mail(tmp_path, number, subject=f"Mandrel {number}", body=f"Job {number}. {STOCK}")
        copy = tmp_path / "copy.eml"
        copy.write_bytes(
            mail(tmp_path, 1, subject="Mandrel 1", body=f"Job 1. {STOCK}").read_bytes()
        )
        assert main(["--shop", shop, "collect", str(tmp_path)]) == 0
        assert capsys.readouterr().out.startswith("23 new (23 with sizes), 1 known before")

    def test_from_collect_to_a_draft(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        mail(tmp_path, 1)
        mail(tmp_path, 2, "Mandrel for 2 x .049 wall 304, 6 in CLR please.", "Thin tube")
        call = ["--shop", shop]
        assert main([*call, "collect", str(tmp_path)]) == 0
        assert capsys.readouterr().out.startswith(
            "2 new (2 with sizes), 0 known before, 0 not usable."
        )
        assert main([*call, "collect", str(tmp_path)]) == 0
        assert capsys.readouterr().out.startswith("0 new, 2 known before, 0 not usable.")

        assert main([*call, "backlog"]) == 0
        out = capsys.readouterr().out
        assert "2 wait for a person" in out
        assert "wall factor 40.82, limit 30" in " ".join(out.split())

        assert main([*call, "show", "2"]) == 0
        out = capsys.readouterr().out
        assert "Inquiry 2: Thin tube" in out
        assert "Subject: Re: Thin tube" in out

        assert main([*call, "correct", "2", "wall=.083", "material=316L", "--by", "Kit"]) == 0
        out = capsys.readouterr().out
        # 2 / .083 = 24.1
        assert "wall factor 24.1, D of bend 3" in out
        assert "stainless steel, 316L" in out

        assert main([*call, "approve", "1", "--by", "Kit Lindgren"]) == 0
        assert main([*call, "approve", "1", "--by", "Robin Ashdown"]) == 1
        assert "inquiry 1 was already approved by Kit Lindgren" in capsys.readouterr().err
        assert main([*call, "set-aside", "2", "--by", "Kit", "--why", "answered by phone"]) == 0
        assert main([*call, "backlog"]) == 0
        assert capsys.readouterr().out.splitlines()[-1] == "Nothing waits."

        assert main([*call, "deliver"]) == 0
        draft = Path(shop) / "drafts" / "1.eml"
        assert f"Inquiry 1: the draft lies in {draft}\n" in capsys.readouterr().out
        assert b"In-Reply-To: <1@example.com>" in draft.read_bytes()
        assert main([*call, "deliver"]) == 0
        assert capsys.readouterr().out == (
            "Nothing to lay down: no draft is approved and not yet delivered.\n"
        )

    def test_the_backlog_says_why_of_a_message_without_sizes(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        mail(tmp_path, 1, "Where is our order F-2119?", "Order F-2119")
        assert main(["--shop", shop, "collect", str(tmp_path)]) == 0
        assert main(["--shop", shop, "backlog"]) == 0
        assert "an order in hand" in " ".join(capsys.readouterr().out.split())

    def test_a_broken_source_is_named_and_the_rest_collected(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        good = mail(tmp_path, 1)
        assert main(["--shop", shop, "collect", str(tmp_path / "gone"), str(good)]) == 1
        out, err = capsys.readouterr()
        assert out.startswith("1 new (1 with sizes), 0 known before, 1 not usable.")
        assert err == f"bendreply: {tmp_path / 'gone'}: there is no such file\n"

    def test_nothing_named_to_collect(self, shop: str, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["--shop", shop, "collect"]) == 2
        err = capsys.readouterr().err
        assert "nothing to collect from: shop.toml has no [mailbox]; name files" in err

    @pytest.mark.parametrize("call", [["show", "77"], ["approve", "77", "--by", "Kit Lindgren"]])
    def test_an_unknown_number(
        self, call: list[str], shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        main(["--shop", shop, "collect", str(mail(tmp_path, 1))])
        capsys.readouterr()
        assert main(["--shop", shop, *call]) == 1
        assert capsys.readouterr().err == (
            "bendreply: there is no inquiry 77: `bendreply backlog` shows the numbers that wait\n"
        )

    @pytest.mark.parametrize(
        ("change", "sentence"),
        [
            ("wall", "'wall' is no correction: write e.g. wall=16ga or 2.od=38mm"),
            (
                "colour=red",
                "there is no field 'colour': the fields are od, wall, clr, material, grade, shape, "
                "quantity, needed_by",
            ),
            (
                "wall=thick",
                "wall=thick: this can't be read as one wall, e.g. wall=.095 or wall=16ga",
            ),
            ("needed_by=soon", "needed_by=soon: write the date like 2026-12-01"),
            ("shape=oval", "shape=oval: the shapes are round, square, rectangular, other"),
        ],
    )
    def test_a_correction_that_cannot_be_understood(
        self,
        change: str,
        sentence: str,
        shop: str,
        tmp_path: Path,
        capsys: pytest.CaptureFixture[str],
    ) -> None:
        main(["--shop", shop, "collect", str(mail(tmp_path, 1))])
        capsys.readouterr()
        assert main(["--shop", shop, "correct", "1", change]) == 2
        assert capsys.readouterr().err == f"bendreply: {sentence}\n"

    def test_with_several_sizes_a_correction_says_which(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        two = "Mandrels please:\n1.75 x .095 DOM, 5.25 clr\n1.5 x .065 DOM, 4.5 clr"
        main(["--shop", shop, "collect", str(mail(tmp_path, 1, two))])
        capsys.readouterr()
        assert main(["--shop", shop, "correct", "1", "wall=.083"]) == 2
        assert capsys.readouterr().err == (
            "bendreply: this inquiry has 2 sizes: say which one is meant, e.g. 2.wall=.083\n"
        )
        assert main(["--shop", shop, "correct", "1", "2.wall=.083"]) == 0
        assert "1.5 in (38.1 mm)" in capsys.readouterr().out

    def test_no_store_yet(self, shop: str, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["--shop", shop, "backlog"]) == 1
        assert "store.sqlite" in capsys.readouterr().err
        assert not (Path(shop) / "store.sqlite").exists()


class TestReport:
    def test_on_screen_as_json_and_into_a_file(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        main(["--shop", shop, "collect", str(mail(tmp_path, 1))])
        capsys.readouterr()
        call = ["--shop", shop, "report", "--week", "2026-W47"]
        assert main(call) == 0
        assert "1 request from 1 customer" in capsys.readouterr().out
        assert main([*call, "--json"]) == 0
        assert json.loads(capsys.readouterr().out)["sizes"][0]["od_mm"] == 44.45
        file = tmp_path / "week.txt"
        assert main([*call, "--out", str(file)]) == 0
        assert capsys.readouterr().out == f"The report lies in {file}.\n"
        assert file.read_text(encoding="utf-8").startswith("Week 2026-W47")

    @pytest.mark.parametrize(
        ("name", "start"),
        [("week.html", "<!DOCTYPE html>"), ("week.csv", "section,item,"), ("week.json", '{"week"')],
    )
    def test_the_files_name_says_what_is_written(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str, start: str
    ) -> None:
        main(["--shop", shop, "collect", str(mail(tmp_path, 1))])
        file = tmp_path / name
        call = ["--shop", shop, "report", "--week", "2026-W46..2026-W47", "--out", str(file)]
        assert main(call) == 0
        assert file.read_text(encoding="utf-8").startswith(start)
        capsys.readouterr()
        assert main(["--shop", shop, "report", "--week", "last", "--csv"]) == 0
        assert capsys.readouterr().out.startswith("section,item,figure,value")

    def test_without_a_mailbox_it_can_not_be_laid_in_one(
        self, shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        main(["--shop", shop, "collect", str(mail(tmp_path, 1))])
        capsys.readouterr()
        assert main(["--shop", shop, "report", "--deliver"]) == 1
        assert "the report needs a mailbox to be laid in" in capsys.readouterr().err

    def test_a_week_that_is_none(self, shop: str, capsys: pytest.CaptureFixture[str]) -> None:
        assert main(["--shop", shop, "report", "--week", "2025-W53"]) == 2
        assert capsys.readouterr().err == (
            "bendreply: --week: '2025-W53' is not a week of that year\n"
        )


class TestDemo:
    def test_the_whole_job_and_again(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        folder = tmp_path / "demo"
        assert main(["demo", "--into", str(folder)]) == 0
        out = capsys.readouterr().out
        assert "messages collected" in out
        assert "Week 2026-W47" in out
        drafts = sorted((folder / "drafts").iterdir())
        assert drafts
        before = [(draft.name, draft.read_bytes()) for draft in drafts]
        assert all(b"\nBcc:" not in data for _, data in before)

        assert main(["demo", "--into", str(folder)]) == 0
        out = capsys.readouterr().out
        assert "nothing new" in out
        after = [(p.name, p.read_bytes()) for p in sorted((folder / "drafts").iterdir())]
        assert after == before

    def test_a_folder_with_other_things_is_left_alone(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        (tmp_path / "letter.txt").write_text("mine", encoding="utf-8")
        assert main(["demo", "--into", str(tmp_path)]) == 2
        assert capsys.readouterr().err == (
            f"bendreply: --into: {tmp_path} is not empty; name a folder that is new or empty.\n"
        )
        assert [p.name for p in tmp_path.iterdir()] == ["letter.txt"]


class TestScore:
    def test_figures_and_json(self, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
        mail(tmp_path, 1)
        label = {
            "file": "1.eml",
            "kind": "sizes",
            "requests": [
                {"od_mm": 44.45, "wall_mm": 2.413, "clr_mm": 133.35, "material": "carbon_steel",
                 "quantity": 1}
            ],
        }  # fmt: skip
        (tmp_path / "gold.jsonl").write_text(json.dumps(label) + "\n", encoding="utf-8")
        assert main(["score", str(tmp_path)]) == 0
        out = capsys.readouterr().out
        assert out.startswith("Silent misreads: none")
        assert "100.0 %  1 / 1" in out
        assert main(["score", str(tmp_path), "--json"]) == 0
        assert json.loads(capsys.readouterr().out)["fully_right"] == 1.0

    def test_a_folder_without_labels(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        assert main(["score", str(tmp_path)]) == 1
        assert capsys.readouterr().err == (
            f"bendreply: {tmp_path / 'gold.jsonl'}: no labels to score against "
            "(No such file or directory)\n"
        )
