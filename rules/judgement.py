"""One case judged: every rule's findings, and the decision that follows from them."""

from __future__ import annotations

from dataclasses import dataclass

from .assessment import Decision, Finding
from .case import Case
from .checks import RULES


@dataclass(frozen=True, slots=True)
class Judgement:
    """What the rules say of one reading."""

    case: Case
    findings: tuple[Finding, ...]
    decision: Decision

    @property
    def part(self) -> str | None:
        """The part that serves from stock, or None."""
        return self.case.stock.part if self.case.stock else None


def judge(case: Case) -> Judgement:
    """All rules on one case. A broken limit outweighs a question: no answer could mend it."""
    findings = tuple(finding for rule in RULES for finding in rule(case))
    effects = {finding.effect for finding in findings}
    if "declines" in effects:
        decision = Decision.DECLINE
    elif "asks" in effects:
        decision = Decision.ASK
    elif case.stock is not None:
        decision = Decision.STOCK
    else:
        decision = Decision.CUSTOM_MAKE
    return Judgement(case, findings, decision)
