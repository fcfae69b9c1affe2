"""Whether Spark's answers are those of a single process, line for line.

    python verify.py [--hangtrue PATH] [--surveys 20000] [--partitions 7]

Makes an archive of invented surveys from the demo orders, with lines among them that are
no survey, checks it by one process and by Spark in local mode, and compares. Exit code 0
when all lines are the same; 1 with the first that is not.
"""

import argparse
import itertools
import json
import pathlib
import subprocess
import sys
import tempfile
import time

from pyspark.sql import SparkSession

from check import check

DEMO = pathlib.Path(__file__).resolve().parent.parent / "orders" / "surveys.jsonl"


def archive(count):
    """`count` lines: the demo surveys with the widths moved, and what is no survey."""
    demo = [json.loads(line) for line in DEMO.read_text(encoding="utf-8").splitlines()]
    for n in range(count):
        survey = demo[n % len(demo)]
        survey["id"] = f"order {n}"
        widths = survey["readings"]["width"]
        widths["middle"] = f"{60 + n % 41} {1 + 2 * (n % 8)}/16 in"
        line = json.dumps(survey, ensure_ascii=False)
        if n % 97 == 13:
            line = line[: n % len(line)]  # cut: mostly no JSON, sometimes blank
        elif n % 97 == 29:
            line = "é “none” \u2028 \t" + line
        yield line


def answers(folder):
    """The lines of the parts that Spark wrote, in their order."""
    for part in sorted(pathlib.Path(folder).glob("part-*")):
        with part.open(encoding="utf-8", newline="\n") as lines:
            yield from lines


def first_difference(ours, theirs):
    """The number of the first line that is not the same in both, and the two lines."""
    for number, (one, other) in enumerate(itertools.zip_longest(ours, theirs), 1):
        if one != other:
            return number, one, other
    return None


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--hangtrue", default="hangtrue")
    parser.add_argument("--surveys", type=int, default=20_000)
    parser.add_argument("--partitions", type=int, default=7)
    args = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        lines, single = folder / "surveys.jsonl", folder / "single.jsonl"
        with lines.open("w", encoding="utf-8", newline="\n") as out:
            out.writelines(line + "\n" for line in archive(args.surveys))
        begun = time.monotonic()
        with single.open("wb") as out:
            argv = [args.hangtrue, "check", "--format", "json-lines", "--output", "json"]
            subprocess.run([*argv, "--jobs", "1", str(lines)], stdout=out, check=True)
        alone = time.monotonic() - begun
        spark = SparkSession.builder.master("local[*]").appName("hangtrue check").getOrCreate()
        try:
            begun = time.monotonic()
            check(spark, str(lines), str(folder / "answers"), args.hangtrue, args.partitions)
            piped = time.monotonic() - begun
        finally:
            spark.stop()
        parts = len(list((folder / "answers").glob("part-*")))
        with single.open(encoding="utf-8", newline="\n") as ours:
            count = sum(1 for _ in ours)
            ours.seek(0)
            different = first_difference(ours, answers(folder / "answers"))
    if different:
        number, one, other = different
        print(f"answer {number} is not the same:\n  one process: {one}\n  Spark: {other}")
        return 1
    if parts < 2 or count < args.surveys * 9 // 10:
        print(f"{parts} partitions and {count} answers prove nothing")
        return 1
    print(
        f"{count} answers in {parts} partitions, the same line for line; "
        f"one process {alone:.1f} s, Spark's pipe {piped:.1f} s"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
