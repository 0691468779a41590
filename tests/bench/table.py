#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws what the programs of this folder have told (told.h): one table of figures beside their floors and limits, and how
what depends on the store grows with it. Usage: table.py FILE. Exit 1: a limit is not kept, or nothing was told."""
import math
import sys
from collections import defaultdict

BAR = 44  # characters


def short(value):
    number = float(value)
    return f"{number:.0f}" if abs(number) >= 100 else f"{number:.3g}"


def in_words(row):
    """Ratio and limit of a row, as people read them."""
    _, what, ours, floor, limit, held, unit, kept = row
    own, least = float(ours), float(floor)
    ratio = "" if least == 0 else f"{own / least:.2f} x"
    said = {"times": f"{short(limit)} x", "more": f"+ {short(limit)} {unit}", "most": f"{short(limit)} {unit}",
            "least": f"{short(limit)} {unit} or more"}[held]
    if held == "more":
        ratio = f"+ {short(own - least)} {unit}"
    return [what, f"{short(ours)} {unit}", f"{short(floor)} {unit}" if least else "", ratio, said, kept]


def table(rows):
    head = ["what", "ours", "floor", "ratio", "limit", "kept"]
    cells = [head] + [in_words(row) for row in rows]
    widths = [max(len(line[i]) for line in cells) for i in range(len(head))]
    rule = "|" + "|".join("-" * (w + 2) for w in widths) + "|"
    for n, line in enumerate(cells):
        print("| " + " | ".join(text.ljust(w) for text, w in zip(line, widths)) + " |")
        if n == 0:
            print(rule)


def growth(points):
    """A bar for each size of store, all on one scale: a decade is as wide everywhere."""
    times = [float(p[3]) for p in points]
    low, high = math.floor(math.log10(min(times))), math.ceil(math.log10(max(times)))
    series = defaultdict(dict)
    for _, what, runs, ours, floor, unit in points:
        series[what][int(runs)] = (float(ours), float(floor), unit)
    print(f"\nGrowth with the runs in the logbook; the bar is logarithmic, {10.0 ** low:g} to {10.0 ** high:g} ms, o = floor")
    width = max(len(what) for what in series)
    for what, sizes in series.items():
        first = None
        for runs, (ours, floor, unit) in sorted(sizes.items()):
            place = lambda ms: round((math.log10(ms) - low) / max(high - low, 1) * BAR)
            bar = list("=" * max(place(ours), 1) + " " * BAR)[:BAR + 1]
            if floor > 0:
                bar[min(max(place(floor), 0), BAR)] = "o"
            times = "" if first is None else f" {ours / first[1]:7.2f} times in {runs / first[0]:.0f} times the runs"
            print(f"{what.ljust(width)} {runs:>8} runs {short(ours):>8} {unit} |{''.join(bar).rstrip()}{times}")
            what = " " * len(what)
            first = first or (runs, ours)


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        told = [line.rstrip("\n").split("\t") for line in file]
    rows = [line for line in told if line[0] == "row"]
    points = [line for line in told if line[0] == "growth" and float(line[3]) > 0]
    for note in dict.fromkeys(line[1] for line in told if line[0] == "note"):
        print(note)
    if not rows:
        sys.exit("nothing was told")
    table(rows)
    if points:
        growth(points)
    sys.exit(any(row[7] != "yes" for row in rows))


if __name__ == "__main__":
    main()
