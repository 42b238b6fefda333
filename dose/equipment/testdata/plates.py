#!/usr/bin/python3
"""plates.py > plates.jsonl: loading problems and their answers by plain enumeration, standard library only.

Cases are drawn with splitmix64, seed 20260103: 1000 small, 300 in pounds, 60 big. Each has one handle or bar ("bar"),
"sides" places loaded alike (2: one implement; 4: a pair of dumbbells), plates as [mass, how many exist] and a target in
all. Masses are whole grams, or hundredths of a pound where "unit" is "clb". Answers: "loads", how many totals can be
made; "total", the greatest of them not above the target; "used", the fewest plates that make it (null: none fits).
Printed are the first 20 small and pound cases and every eighteenth big one; the three lines of stderr are checksums over all answers and all totals of the
small, the pound and the big cases, of which plates_test.go holds the first two.
"""
import hashlib, json, sys

state = 20260103
MASK = 2**64 - 1
KG = [250, 500, 1000, 1250, 2000, 2500, 5000, 10000, 15000, 20000, 25000]
LB = [125, 250, 500, 1000, 2500, 3500, 4500]
ODD = [333, 700, 1134, 1360, 2268, 4536, 9072]  # pound plates weighed in grams


def draw(n):
    global state
    state = (state + 0x9E3779B97F4A7C15) & MASK
    z = state
    z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
    z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
    return (z ^ (z >> 31)) % n


def case(name, unit, pool, kinds, most, bars):
    pool, plates = list(pool), []
    for _ in range(kinds):
        plates.append([pool.pop(draw(len(pool))), 2 + draw(most - 1)])
    plates.sort(reverse=True)
    sides = 4 if draw(2) == 0 else 2
    bar = bars[draw(len(bars))]
    top = bar * sides // 2 + sides * sum(w * (n // sides) for w, n in plates)
    return {"id": name, "unit": unit, "bar": bar, "sides": sides, "plates": plates, "target": draw(top + top // 10 + 1)}


def solve(c):
    """Every mass at one place with the fewest plates for it, then the greatest that fits."""
    sides, empty = c["sides"], c["bar"] * c["sides"] // 2
    fewest = {0: 0}
    for w, n in c["plates"]:
        more = dict(fewest)
        for at, k in fewest.items():
            for x in range(1, n // sides + 1):
                if k + x < more.get(at + x * w, 1 << 30):
                    more[at + x * w] = k + x
        fewest = more
    totals = sorted(empty + sides * at for at in fewest)
    fit = [at for at in fewest if empty + sides * at <= c["target"]]
    c["loads"] = len(totals)
    c["total"] = empty + sides * max(fit) if fit else None
    c["used"] = sides * fewest[max(fit)] if fit else None
    return totals


def run(name, n, make, shown):
    """shown tells which cases are printed."""
    answers, all_totals = hashlib.sha256(), hashlib.sha256()
    for i in range(n):
        c = make(i)
        totals = solve(c)
        answers.update(("%s %s %s\n" % (c["id"], c["total"], c["used"])).encode())
        all_totals.update((",".join(map(str, totals)) + "\n").encode())
        if shown(i):
            print(json.dumps(c))
    print(name, answers.hexdigest(), all_totals.hexdigest(), file=sys.stderr)


if __name__ == "__main__":
    run("small", 1000, lambda i: case(f"s{i:04d}", "g", ODD if i % 3 == 0 else KG, 3 + draw(3), 12, [1500, 2000, 2500, 7000, 20000]), lambda i: i < 20)
    run("pound", 300, lambda i: case(f"p{i:04d}", "clb", LB, 3 + draw(4), 12, [500, 550, 3500, 4500]), lambda i: i < 20)
    run("big", 60, lambda i: case(f"b{i:04d}", "g", KG + ODD, 10 + draw(5), 60, [2000, 20000]), lambda i: i % 18 == 0)
