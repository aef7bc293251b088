"""What a reviewer checks that is not arithmetic between values: one rule a file."""

from specwriter.rules.engine import Defect, RuleReport, run_rules
from specwriter.rules.registry import RegisteredRule, all_rules
from specwriter.rules.rule import Rule

__all__ = ["Defect", "RegisteredRule", "Rule", "RuleReport", "all_rules", "run_rules"]
