"""format=flowed: joins the lines that the sender's program broke (RFC 3676)."""

from __future__ import annotations


def unflow(text: str, *, delsp: bool) -> str:
    """Paragraphs made whole again: a size broken over two lines is one size.

    RFC 3676 4: a line that ends in a blank goes on in the next line of the same quote depth; one
    leading blank is stuffing; "-- " is the signature line, and neither goes on nor is joined to.
    With ``delsp`` the blank that marks the break is not part of the text.
    """
    out: list[str] = []
    held: list[str] = []
    held_depth = 0
    for line in text.split("\n"):
        unquoted = line.lstrip(">")
        depth = len(line) - len(unquoted)
        content = unquoted[1:] if unquoted.startswith(" ") else unquoted
        is_signature_line = content == "-- "
        if held and (depth != held_depth or is_signature_line):
            out.append(_written(held, held_depth))
            held = []
        if content.endswith(" ") and not is_signature_line:
            held.append(content[:-1] if delsp else content)
            held_depth = depth
            continue
        out.append(_written([*held, content], depth))
        held = []
    if held:
        out.append(_written(held, held_depth))
    return "\n".join(out)


def _written(pieces: list[str], depth: int) -> str:
    line = "".join(pieces)
    if line != "-- ":
        line = line.rstrip(" ")
    return f"{'>' * depth} {line}".rstrip() if depth and line != "-- " else ">" * depth + line
