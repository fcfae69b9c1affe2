"""`hangtrue check` over an archive that is larger than one machine, on Apache Spark.

Spark cuts the archive into partitions and hands each, line by line, to one `hangtrue
check` (`RDD.pipe`); the answers come back in the order of the archive. The command
keeps nothing between lines, so a partition needs no more memory than one process.

    python check.py ARCHIVE ANSWERS

ARCHIVE is whatever Spark reads as text: a file, a folder, a pattern, `s3a://…`. ANSWERS
is a folder that is not there yet; its parts, in the order of their names, are the answers.
"""

import argparse
import shlex

from pyspark.sql import SparkSession


def check(spark, archive, answers, command="hangtrue", partitions=None):
    """Checks every survey of `archive`, one a line, into the folder `answers`."""
    lines = spark.sparkContext.textFile(archive, partitions)
    # One process a partition, on one processor: Spark runs as many as there are. The
    # format is said, because the first line of a partition is any line of the archive.
    argv = [command, "check", "--format", "json-lines", "--output", "json", "--jobs", "1"]
    lines.pipe(shlex.join(argv), checkCode=True).saveAsTextFile(answers)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("archive")
    parser.add_argument("answers")
    parser.add_argument("--hangtrue", default="hangtrue", help="the command, on every machine")
    parser.add_argument("--partitions", type=int, help="at least so many")
    args = parser.parse_args()
    spark = SparkSession.builder.appName("hangtrue check").getOrCreate()
    try:
        check(spark, args.archive, args.answers, args.hangtrue, args.partitions)
    finally:
        spark.stop()


if __name__ == "__main__":
    main()
