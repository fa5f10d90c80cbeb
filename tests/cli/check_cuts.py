"""Checks a certificate of 'sawbill cuts --certificate' by nothing but what include/sawbill/report.h says of it.

usage: check_cuts.py CERTIFICATE...
Each plan: every piece once, every stick fits, supply kept, cost added up.  Each bound: the most valuable filling of
every stock is worked out again from the values of the pieces.  Where a search raised the bound, the search is done
again here, by another method, up to a limit of steps.  Exit 1: something does not hold; 2: the limit was met.
"""
import json
import math
import sys
from collections import Counter

SIXTY_FOURTH = 1016000 // 64
MOST_STATES = 2000000


class Fault(Exception):
    pass


class Limit(Exception):
    pass


def need(truth, what):
    if not truth:
        raise Fault(what)


def parts(piece, places):
    """(label, length) of a piece joined at these places."""
    edges = [0] + sorted(places) + [piece["length"]]
    if len(edges) == 2:
        return [(piece["label"], piece["length"])]
    return [(f"{piece['label']}, part {i + 1} of {len(edges) - 1}", b - a)
            for i, (a, b) in enumerate(zip(edges, edges[1:]))]


def wanted(problem, joined):
    """{(label, length): count} when the pieces are joined at {piece: places}."""
    want = Counter()
    for number, piece in enumerate(problem["pieces"]):
        for part in parts(piece, joined.get(number, [])):
            want[part] += piece["count"]
    return +want


def places_of(rows):
    return {row["piece"]: row["at"] for row in rows}


def check_plan(problem):
    want = wanted(problem, places_of(problem["joined"]))
    got, used, cost, kerf = Counter(), Counter(), 0, problem["kerf"]
    for stick in problem["sticks"]:
        stock, lengths = problem["stock"][stick["stock"]], [p["length"] for p in stick["pieces"]]
        need(lengths, "a stick without a piece")
        cuts = len(lengths) - (0 if problem["square_both_ends"] else 1)
        rest = stock["usable"] - sum(lengths) - cuts * kerf
        need(rest >= 0, "a stick is too short for its pieces")
        if not problem["square_both_ends"]:
            rest -= min(rest, kerf)
        need(rest == stick["cutoff"], "a cutoff is wrong")
        for piece in stick["pieces"]:
            got[piece["label"], piece["length"]] += stick["times"]
        used[stick["stock"]] += stick["times"]
        cost += stick["times"] * stock["cost"]
    need(got == want, "the pieces cut are not those wanted")
    for index, count in used.items():
        supply = problem["stock"][index]["supply"]
        need(supply is None or count <= supply, "more of a stock is used than there is")
    need(cost == problem["cost"], "the cost is not the sum of the sticks")


class Way:
    """The problem for one way of joining, in whole units: kinds of pieces and the stock that may be needed."""

    def __init__(self, problem, proof):
        demand = Counter()
        for (_, length), count in wanted(problem, places_of(proof["joined"])).items():
            demand[length] += count
        kerf = problem["kerf"]
        unit = math.gcd(*[length + kerf for length in demand])
        rooms = [s["usable"] + (0 if problem["square_both_ends"] else kerf) if s["usable"] > 0 else 0
                 for s in problem["stock"]]
        if unit < SIXTY_FOURTH and max(rooms, default=0) // unit > 40000:
            need(problem["rounded"], "rounded lengths that are not said")
            unit = SIXTY_FOURTH
        values = {v["length"]: v["value"] for v in proof["values"]}
        need(set(values) <= set(demand) and all(v >= 0 for v in values.values()), "values of other pieces")
        self.kinds = [(-(-(length + kerf) // unit), count, values.get(length, 0))
                      for length, count in sorted(demand.items(), reverse=True)]
        self.pieces = sum(demand.values())
        self.scale = proof["scale"]
        self.stock = []
        for index, (room, stock) in enumerate(zip(rooms, problem["stock"])):
            supply = stock["supply"]
            if supply is not None and supply >= self.pieces:
                supply = None
            extra = proof["extra"][index] if proof["extra"] else 0
            self.stock.append((room // unit, stock["cost"], supply, extra))
        self.stock = [s for i, s in enumerate(self.stock) if self.is_needed(i)]

    def is_needed(self, at):
        room, cost, supply, _ = self.stock[at]
        if room < min(size for size, _, _ in self.kinds):
            return False
        for i, (r, c, s, _) in enumerate(self.stock):
            if i != at and s is None and r >= room and c <= cost:
                if not (r == room and c == cost and supply is None and i > at):
                    return False
        return True

    def is_possible(self):
        return any(room >= self.kinds[0][0] for room, _, _, _ in self.stock)

    def step(self):
        return math.gcd(*[cost for _, cost, _, _ in self.stock]) or 1

    def fillings(self):
        """The most valuable filling of every length."""
        longest = max(room for room, _, _, _ in self.stock)
        most = [0] * (longest + 1)
        for size, count, value in self.kinds:
            left, copies = min(count, longest // size), 1
            while left > 0:
                taken = min(copies, left)
                weight, worth = taken * size, taken * value
                for c in range(longest, weight - 1, -1):
                    most[c] = max(most[c], most[c - weight] + worth)
                left, copies = left - taken, 2 * copies
        return most

    def bound(self):
        if self.scale <= 0:
            return 0
        most, total = self.fillings(), sum(count * value for _, count, value in self.kinds)
        for room, cost, supply, extra in self.stock:
            need(extra >= 0 and (extra == 0 or supply is not None), "extra where there may be none")
            need(most[room] <= self.scale * cost + extra, "a stick may hold more than the proof says")
            total -= extra * (supply or 0)
        step = self.step()
        return max(0, -(-total // (self.scale * step)) * step)


class Search:
    """Is there a plan cheaper than `cost`?  Depth first, stick by stick: each holds the longest piece that is left.

    A filling's price above its pieces' values is what a plan may waste only as far as the bound leaves room."""

    def __init__(self, way, cost):
        self.way = way
        self.most = cost - way.step()
        self.seen, self.states = {}, 0
        self.values = [value for _, _, value in way.kinds]
        self.sizes = [size for size, _, _ in way.kinds]

    def least_more(self, left, used):
        """A bound of what the pieces left cost, times the scale."""
        total = sum(n * v for n, v in zip(left, self.values))
        for i, (_, _, supply, extra) in enumerate(self.way.stock):
            if supply is not None:
                total -= extra * (supply - used[i])
        return max(0, total)

    def fills(self, left, first, room):
        """Every filling of the room that has the first kind and cannot take another piece that is left."""
        counts = [0] * len(left)

        def go(kind, rest):
            if kind == len(left):
                if all(counts[i] == left[i] or self.sizes[i] > rest for i in range(first, len(left))):
                    yield tuple(counts)
                return
            least = 1 if kind == first else 0
            for n in range(min(left[kind], rest // self.sizes[kind]), least - 1, -1):
                counts[kind] = n
                yield from go(kind + 1, rest - n * self.sizes[kind])
            counts[kind] = 0

        yield from go(first, room)

    def is_cheaper(self, left, used, spent):
        if not any(left):
            return spent <= self.most
        if self.way.scale * spent + self.least_more(left, used) > self.way.scale * self.most:
            return False
        state = (left, used)
        if self.seen.get(state, spent + 1) <= spent:
            return False
        self.seen[state] = spent
        self.states += 1
        if self.states > MOST_STATES:
            raise Limit
        first = next(i for i, n in enumerate(left) if n)
        for i, (room, cost, supply, _) in enumerate(self.way.stock):
            if room < self.sizes[first] or (supply is not None and used[i] == supply):
                continue
            now = used[:i] + (used[i] + (supply is not None),) + used[i + 1:]
            for fill in self.fills(left, first, room):
                if self.is_cheaper(tuple(a - b for a, b in zip(left, fill)), now, spent + cost):
                    return True
        return False

    def run(self):
        left = tuple(count for _, count, _ in self.way.kinds)
        return self.is_cheaper(left, tuple(0 for _ in self.way.stock), 0)


def check_bound(problem):
    """What was done, in words."""
    least, ways = None, []
    for proof in problem["proofs"]:
        way = Way(problem, proof)
        if not way.is_possible():
            continue
        bound = way.bound()
        need(bound == proof["bound"], f"the bound is {bound}, not {proof['bound']}")
        least = bound if least is None else min(least, bound)
        ways.append(way)
    least = least or 0
    need(problem["certified"] == least, "what the proofs show")
    need(problem["searched"] == (problem["bound"] > least), "whether a search raised the bound")
    if not problem["searched"]:
        need(problem["bound"] == least, "the bound is not that of the proof")
        return "bound checked"
    if problem["bound"] < problem["cost"]:
        return "bound of a search that met its limit: not done again"
    sys.setrecursionlimit(100000)
    states = 0
    for way in ways:
        search = Search(way, problem["cost"])
        need(not search.run(), "a cheaper plan exists")
        states += search.states
    return f"bound of the proof checked, nothing cheaper in {states} states"


def main():
    status = 0
    for name in sys.argv[1:]:
        with open(name, encoding="utf-8") as file:
            certificate = json.load(file)
        need(certificate["format"] == "sawbill cuts 1", "format")
        for problem in certificate["problems"]:
            if problem["verdict"] == "infeasible":
                continue
            try:
                check_plan(problem)
                need(problem["bound"] <= problem["cost"], "the bound is above the cost")
                proved = problem["bound"] == problem["cost"]
                need(problem["verdict"] == ("proved optimal" if proved else "best found"), "the verdict")
                what = check_bound(problem)
            except Fault as fault:
                what, status = f"FAULT: {fault}", 1
            except Limit:
                what, status = "the search is too long to do again here", max(status, 2)
            print(f"{problem['member'] or 'list'}: {problem['cost']} {problem['verdict']}: {what}")
    sys.exit(status)


if __name__ == "__main__":
    main()
