"""The least and the most of every reading of every survey, with pint and pydantic.

    python tests/bench/archive/minmax.py SURVEYS.jsonl > ANSWERS.jsonl

It does: JSON and the shape (one text a place, or several) in pydantic's own compiled parser;
each text to a number, whole, fraction or both, with `fractions`; each number to millimetres
with pint; least and most. One line of JSON a survey. It does not: feet, words, quotes and slips
of the pen in a text; readings against each other; the judge; the four ordered numbers; sentences.
The limits are those of limits.mjs beside it; crates/core/src/bounds.rs has the reasons.
"""

import json
import sys
from fractions import Fraction
from typing import Annotated, Optional, Union

import pint
from pydantic import AfterValidator, BaseModel, ValidationError

UNITS = pint.UnitRegistry()
MILLIMETRE = UNITS.millimetre


def number(text):
    return float(sum(map(Fraction, text.split(" "))))


def survey_in(unit):
    def reading(least, most):
        def within(text):
            length = UNITS.Quantity(number(text), unit).m_as(MILLIMETRE)
            if not least <= length <= most:
                raise ValueError(f"{length:.1f} mm is not between {least} and {most}")
            return length

        length = Annotated[str, AfterValidator(within)]
        return Optional[dict[str, Union[length, list[length]]]]

    class Readings(BaseModel):
        width: reading(914.4, 2600) = None
        height: reading(914.4, 3098.8) = None
        header: reading(177.8, 1219.2) = None
        bow: reading(19.05, 50.8) = None
        diagonal: reading(914.4, 4600) = None
        loop: reading(914.4, 3800) = None

    class Survey(BaseModel):
        id: str
        readings: Readings

    return Survey.model_validate_json


def main():
    inches, millimetres = survey_in(UNITS.inch), survey_in(MILLIMETRE)
    with open(sys.argv[1], "rb") as lines:
        for line in lines:
            check = millimetres if b'"unit":"mm"' in line else inches
            try:
                answer = {"id": check(line).id, "ok": True, "issues": []}
            except ValidationError as error:
                issues = [f"{e['loc']}: {e['msg']}" for e in error.errors(include_url=False)]
                answer = {"id": json.loads(line)["id"], "ok": False, "issues": issues}
            print(json.dumps(answer))


if __name__ == "__main__":
    main()
