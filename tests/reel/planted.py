#!/usr/bin/python3
"""Makes cutting-stock instances whose optimum is known from how they were made.

    planted.py FOLDER      writes FOLDER/NAME.txt of each instance, and FOLDER/optimum.tsv

The same Python gives the same files. Lengths are whole millimetres. NAME.txt:

    K                      kinds of stock, then K lines `length count cost`; 999999: as many as are wanted
    m                      kinds of piece, then m lines `length count`

Some stocks are chosen first and each is cut into pieces; the pieces are the question. Why no plan can be
better than the one that was planted:

    triplet     Three pieces fill each stock to the end, so no fewer stocks can hold them all.
    zerowaste   Every planted stock is cut without waste, and a stock costs its length: no plan can cost
                less than the pieces are long.
    cut_loss    The same with a loss for every cut. A piece and the cut behind it take length + loss, a stock
                offers length + loss; all of the stock is needed.
    offcut      Offcuts are free and new reels cost 1. All offcuts and all planted reels are cut without
                waste, so fewer new reels cannot hold the pieces.
    bigitem     Every planted stock holds one piece longer than half of it. No two of these share a stock.
    mixedcost   Costs are not in proportion to length, but the pieces are as long as all of the stock: every
                plan uses it all, and costs the same.
    large       zerowaste, with some 14,000 pieces.
    infeasible  More is wanted than there is, or a piece is longer than any stock.
"""

import random
import sys
from collections import Counter
from pathlib import Path
from typing import NamedTuple

SEED = "libsplice"
UNLIMITED = 999999


class Stock(NamedTuple):
    length: int
    count: int
    cost: int


class Instance(NamedTuple):
    name: str
    stocks: list
    pieces: list
    optimum: object  # or None: it cannot be done
    cut_loss: int = 0


def chance(*names):
    return random.Random("/".join(str(name) for name in (SEED, *names)))


def split(draw, length, parts, shortest, step=1):
    """`length` as a list of whole numbers, none under `shortest`; all but the last in whole steps."""
    parts = min(parts, length // shortest)
    free = length - parts * shortest
    cuts = sorted(draw.randint(0, free) // step * step for _ in range(parts - 1))
    return [shortest + to - at for at, to in zip([0, *cuts], [*cuts, free])]


def lengths_of(stocks):
    """The stock as it lies there: a length for each."""
    return [stock.length for stock in stocks for _ in range(stock.count)]


def triplet(stocks):
    draw = chance("triplet", stocks)
    pieces = []
    for _ in range(stocks):
        first = draw.randint(380, 490)
        second = draw.randint(250, (1000 - first) // 2)
        pieces += [first, second, 1000 - first - second]
    return Instance(f"triplet_{3 * stocks}", [Stock(1000, UNLIMITED, 1)], pieces, stocks)


def zerowaste(kinds, stocks, step):
    draw = chance("zerowaste", kinds, stocks)
    lengths = sorted((500 * n for n in draw.sample(range(20, 401, 5), kinds)), reverse=True)
    used, pieces = Counter(), []
    for _ in range(stocks):
        length = draw.choice(lengths)
        used[length] += 1
        pieces += split(draw, length, draw.randint(2, 7), 800, step)
    rows = [Stock(length, used[length] + draw.randint(0, 6), length) for length in lengths]
    return Instance(f"zerowaste_{kinds}x{stocks}", rows, pieces, sum(pieces))


def cut_loss(loss, stocks):
    draw = chance("cut_loss", loss)
    lengths = (100000, 60000, 25000)
    used, pieces = Counter(), []
    for _ in range(stocks):
        length = draw.choice(lengths)
        used[length] += 1
        parts = draw.randint(2, 6)
        pieces += split(draw, length - loss * (parts - 1), parts, 1200)
    rows = [Stock(length, used[length], length) for length in lengths if used[length]]
    return Instance(f"cut_loss{loss}_{stocks}", rows, pieces, sum(lengths_of(rows)), loss)


def offcut(offcuts, reels, length):
    draw = chance("offcut", offcuts)
    free, pieces = Counter(), []
    for _ in range(offcuts):
        offcut_length = draw.randrange(4000, 60000, 10)
        free[offcut_length] += 1
        pieces += split(draw, offcut_length, draw.randint(1, 4), 1000, 10)
    for _ in range(reels):
        pieces += split(draw, length, draw.randint(4, 12), 1000, 10)
    rows = [Stock(length, UNLIMITED, 1)]
    rows += [Stock(each, count, 0) for each, count in sorted(free.items(), reverse=True)]
    return Instance(f"offcut_{offcuts}_{reels}", rows, pieces, reels)


def bigitem(stocks, length):
    draw = chance("bigitem", stocks)
    pieces = []
    for _ in range(stocks):
        big = draw.randint(length // 2 + 1, length * 7 // 10)
        rest = length - big - draw.randint(0, length * 4 // 100)
        pieces += [big, *split(draw, rest, draw.randint(1, 4), length // 100)]
    return Instance(f"bigitem_{stocks}", [Stock(length, UNLIMITED, 1)], pieces, stocks)


def mixedcost(stocks):
    draw = chance("mixedcost", stocks)
    used = Counter(200 * draw.choice((300, 275, 250, 200, 150, 100, 50)) for _ in range(stocks))
    rows = [Stock(length, used[length], round(100 * length**0.5)) for length in sorted(used, reverse=True)]
    pieces = []
    for length in lengths_of(rows):
        pieces += split(draw, length, draw.randint(2, 5), 700, 20)
    return Instance(f"mixedcost_{stocks}", rows, pieces, sum(row.count * row.cost for row in rows))


def large(stocks):
    draw = chance("large")
    lengths = (220000, 200000, 100000, 50000)
    patterns = []
    for _ in range(60):
        length = draw.choice(lengths)
        patterns.append((length, split(draw, length, draw.randint(3, 9), 2000, 250)))
    used, pieces = Counter(), []
    for _ in range(stocks):
        length, pattern = draw.choice(patterns)
        used[length] += 1
        pieces += pattern
    rows = [Stock(length, used[length] + 50, length) for length in lengths]
    return Instance(f"large_{stocks}", rows, pieces, sum(pieces))


def infeasible():
    draw = chance("infeasible")
    pieces = [draw.randint(3000, 9000) for _ in range(60)]
    little = [Stock(50000, 3, 50000), Stock(20000, 1, 20000)]
    assert sum(pieces) > sum(lengths_of(little))
    yield Instance("infeasible_little", little, pieces, None)
    yield Instance("infeasible_long", [Stock(50000, 10, 50000)], [12000, 8000, 50001], None)


def instances():
    yield from map(triplet, (20, 40, 83, 167))
    for kinds, stocks, step in ((2, 12, 50), (3, 40, 25), (5, 120, 10), (8, 60, 1)):
        yield zerowaste(kinds, stocks, step)
    for loss, stocks in ((3, 10), (5, 30), (12, 60)):
        yield cut_loss(loss, stocks)
    for offcuts, reels, length in ((6, 3, 100000), (15, 10, 200000), (40, 25, 200000)):
        yield offcut(offcuts, reels, length)
    for stocks, length in ((15, 6000), (60, 50000), (300, 100000)):
        yield bigitem(stocks, length)
    yield from map(mixedcost, (12, 50))
    yield large(2500)
    yield from infeasible()


def write(instance, folder):
    counts = Counter(instance.pieces)
    lines = [str(len(instance.stocks))]
    lines += [f"{stock.length} {stock.count} {stock.cost}" for stock in instance.stocks]
    lines += [str(len(counts))]
    lines += [f"{length} {counts[length]}" for length in sorted(counts, reverse=True)]
    (folder / f"{instance.name}.txt").write_text("\n".join(lines) + "\n")


def main(arguments):
    if len(arguments) != 1:
        sys.exit(__doc__)
    folder = Path(arguments[0])
    folder.mkdir(parents=True, exist_ok=True)
    rows = ["instance\tcut_loss_mm\toptimum"]
    for instance in instances():
        write(instance, folder)
        optimum = "none" if instance.optimum is None else instance.optimum
        rows.append(f"{instance.name}\t{instance.cut_loss}\t{optimum}")
    (folder / "optimum.tsv").write_text("\n".join(rows) + "\n")


if __name__ == "__main__":
    main(sys.argv[1:])
