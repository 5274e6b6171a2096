"""Works out the tables of change of this case from the records as README.md lays them out, and compares.

    python change.py expected          (the folder that holds taxon_change_counts.csv and the others)

scipy 1.17.1 and statsmodels 0.15.0 under Python 3.11 found no difference. Nothing of the program is used: intervals are
scipy's exact and statsmodels' Wilson ones, to 1e-7. Letters: e earlier, r recent, x outside, - none.
"""

import csv, sys, math
from itertools import product
from scipy.stats import binomtest

D = sys.argv[1]
# id taxon hectad tetrad period year visit source ; from the page of the case
R = """r01 rubrum SK12 A e 1995 a walks
r02 rubrum SK12 A e 1995 b walks
r03 rubrum SK12 A r 2010 c walks
r04 rubrum SK12 A r 2010 d walks
r05 album SK12 A e 1996 f walks
r06 nigrum SK12 A r 2011 g walks
r07 viride SK12 Z r 2012 h walks
r08 pair SK12 - r 2013 - walks
r09 rubrum NO42 M r 2015 i walks
r10 viride NO42 M r 2015 i walks
r11 viride NO42 - e 2001 j walks
r12 album NA10 C r 2008 k walks
r13 rubrum NA10 C r 2008 l walks
r14 rubrum O13 M e 1999 m walks
r15 rubrum O13 M e 1999 n walks
r16 rubrum O13 M r 2016 o walks
r17 rubrum O13 M r 2016 p walks
r18 viride O13 M r 2017 q walks
r19 album O13 M e 2000 s walks
r20 rubrum TQ37 Y r 2018 t walks
r21 rubrum - - r 2018 u walks
r22 viride SK12 A x 1985 v walks
r23 viride SK12 A x 2006 - walks
r24 nigrum SK12 A x 2021 w walks
r25 rubrum SK12 Z r 2014 - walks
r26 viride SK12 - r 2019 y walks
r27 album - - r 2016 z walks
r39 viride SK12 - e 1995 - museum"""
R = [dict(zip("id taxon hectad tet period year visit source".split(), l.split())) for l in R.split("\n")]
up = {
    "album": {"album", "pair"},
    "nigrum": {"nigrum", "pair"},
    "pair": {"pair"},
    "rubrum": {"rubrum"},
    "viride": {"viride"},
}
lin = {
    "album": {"album", "pair"},
    "nigrum": {"nigrum", "pair"},
    "pair": {"album", "nigrum", "pair"},
    "rubrum": {"rubrum"},
    "viride": {"viride"},
}
terr = lambda s: "ireland" if s.startswith("O") else "britain"
sq = lambda r, res: (
    None
    if r["hectad"] == "-" or (res == 2000 and r["tet"] == "-")
    else (r["hectad"] if res == 10000 else r["hectad"] + r["tet"])
)
SQ = {res: sorted({sq(r, res) for r in R} - {None}) for res in (10000, 2000)}
SQ[2000] = sorted(set(SQ[2000]))


def cov(t, s, res, p, k, rec):
    return (
        len(
            {
                r["visit"]
                for r in rec
                if sq(r, res) == s and r["period"] == p and r["visit"] != "-" and r["taxon"] not in lin[t]
            }
        )
        >= k
    )


def has(t, s, res, p, rec):
    return any(t in up[r["taxon"]] and sq(r, res) == s and (p is None or r["period"] == p) for r in rec)


def why(c):
    n = c["retained"] + c["gained"] + c["lost"]
    if c["sf"] == 0:
        return "no square in either period" if c["st"] == 0 else "it is a newcomer: no square in the earlier period"
    if n == 0:
        return "no comparable squares"
    if c["retained"] + c["lost"] == 0:
        return "not recorded in the earlier period in any comparable square"
    if n < 2:
        return f"{n} comparable square{'s' if n!=1 else ''}; 2 are needed"
    return ""


def count(t, res, T, k, rec):
    c = dict.fromkeys("retained gained lost rb ns nb c2 c1 c0 sf st".split(), 0)
    for s in SQ[res]:
        if T != "all" and terr(s) != T:
            continue
        f, o = has(t, s, res, "e", rec), has(t, s, res, "r", rec)
        a, b = cov(t, s, res, "e", k, rec), cov(t, s, res, "r", k, rec)
        c["sf"] += f
        c["st"] += o
        if f and o:
            c["retained" if a and b else "rb"] += 1
        elif o:
            c["gained" if a and b else "ns"] += 1
        elif f:
            c["lost" if a and b else "nb"] += 1
        elif not has(t, s, res, None, rec):
            c["c2" if a and b else "c1" if a != b else "c0"] += 1
    return c


def share(t, T, rec):
    hs = [
        s
        for s in SQ[10000]
        if has(t, s, 10000, "e", rec) and has(t, s, 10000, "r", rec) and (T == "all" or terr(s) == T)
    ]
    out = []
    for p in "er":
        own = [r for r in rec if r["period"] == p and t in up[r["taxon"]] and r["hectad"] in hs]
        out.append((len(own), sum(r["tet"] != "-" for r in own)))
    return out


def netiv(c):
    ch = c["gained"] + c["lost"]
    before = c["retained"] + c["lost"]
    if ch == 0:
        return 0, 0
    ci = binomtest(c["gained"], ch).proportion_ci(0.95, "exact")
    return max(-before, ch * (2 * ci.low - 1)), ch * (2 * ci.high - 1)


def whole(lo, hi):
    return (max(1, math.floor(lo)) if lo > 0 else math.floor(lo)), (min(-1, math.ceil(hi)) if hi < 0 else math.ceil(hi))


bad = 0


def same(name, key, exp, row):
    global bad
    for col, v in exp.items():
        g = row[col]
        ok = (
            g == ""
            if v is None
            else (
                abs(float(g) - v) < 1e-7
                if isinstance(v, (int, float)) and not isinstance(v, bool)
                else g == (str(v).lower() if isinstance(v, bool) else v)
            )
        )
        if not ok:
            bad += 1
            print(name, key, col, "expected", v, "got", g)


rows = list(csv.DictReader(open(D + "/taxon_change_counts.csv")))
seen = set()
for r in rows:
    t, res, T, k = r["taxon_id"], int(r["resolution_m"]), r["territory"], int(r["minimum_visits"])
    seen.add((t, res, T, k))
    c = count(t, res, T, k, R)
    n = c["retained"] + c["gained"] + c["lost"]
    reason = why(c)
    if res == 2000 and c["sf"] > 0:
        (a, x), (b, y) = share(t, T, R)
        if a == 0:
            reason = "no 10 km square has records of it in both periods"
        elif min(x / a, y / b) < 0.5:
            reason = f"only {100*x//a} % and {100*y//b} % of its records of the two periods in the same 10 km squares are good to 2 km; 50 % of each are needed"
    j = reason == ""
    iv = whole(*netiv(c)) if j else (None, None)
    tu = binomtest(c["gained"] + c["lost"], n).proportion_ci(0.95, "exact") if j else None
    same(
        "counts",
        (t, res, T, k),
        dict(
            comparable=n,
            retained=c["retained"],
            gained=c["gained"],
            lost=c["lost"],
            net=c["gained"] - c["lost"],
            net_percent=round(100 * (c["gained"] - c["lost"]) / (c["retained"] + c["lost"]), 1) if j else None,
            interval_low=iv[0],
            interval_high=iv[1],
            turnover=round(100 * (c["gained"] + c["lost"]) / n, 1) if j else None,
            turnover_low=round(100 * tu.low, 1) if j else None,
            turnover_high=round(100 * tu.high, 1) if j else None,
            recorded_both_not_covered=c["rb"],
            recorded_both_unsettled=0,
            not_comparable_since=c["ns"],
            not_comparable_before=c["nb"],
            covered_both_no_record=c["c2"],
            covered_one_no_record=c["c1"],
            covered_neither=c["c0"],
            judged=j,
            reason=reason,
        ),
        r,
    )
assert seen == set(product(up, (10000, 2000), ("all", "britain", "ireland"), (2, 4))), len(seen)
one = {r["visit"] for r in R if r["visit"] != "-" and len({q["taxon"] for q in R if q["visit"] == r["visit"]}) == 1}
sets = {
    "main": R,
    "with_provisional_years": R,
    "without_targeted": R,
    "without_mass_events": R,
    "without_single_species_lists": [r for r in R if r["visit"] not in one],
    "without_lots": [r for r in R if r["source"] != "museum"],
    "complete_lists": [],
}
got = {
    (r["taxon_id"], r["evidence_set"]): r
    for r in csv.DictReader(open(D + "/trends.csv"))
    if r["method"] == "squares_compared"
}
assert set(got) == set(product(up, sets))
for (t, s), r in got.items():
    c = count(t, 10000, "all", 2, sets[s])
    m = count(t, 10000, "all", 2, R)
    n = c["retained"] + c["gained"] + c["lost"]
    reason = (
        why(c)
        if not (c["sf"] == 0 and m["sf"] > 0)
        else "no square in the earlier period from this part of the records"
    )
    j = reason == ""
    b = c["retained"] + c["lost"]
    lo, hi = netiv(c)
    same(
        "trends",
        (t, s),
        dict(
            n_from=b,
            n_to=c["retained"] + c["gained"],
            n=n,
            estimate=100 * (c["gained"] - c["lost"]) / b if j else None,
            low=100 * lo / b if j else None,
            high=100 * hi / b if j else None,
            judged=j,
            reason=reason,
        ),
        r,
    )
from statsmodels.stats.proportion import proportion_confint

got = {
    (r["taxon_id"], r["time"]): r for r in csv.DictReader(open(D + "/series.csv")) if r["method"] == "squares_compared"
}
assert set(got) == set(product(up, ("earlier", "recent")))
for (t, p), r in got.items():
    q = p[0]
    cs = [s for s in SQ[10000] if cov(t, s, 10000, q, 2, R)]
    h = sum(has(t, s, 10000, q, R) for s in cs)
    n = len(cs)
    w = proportion_confint(h, n, 0.05, "wilson") if n else None
    same(
        "series",
        (t, p),
        dict(
            n=n,
            estimate=100 * h / n if n else None,
            low=100 * max(0, w[0]) if n else None,
            high=100 * min(1, w[1]) if n else None,
        ),
        r,
    )
exp = []
for t in up:
    first = {}
    for r in R:
        if t in up[r["taxon"]] and r["hectad"] != "-":
            first[r["hectad"]] = min(first.get(r["hectad"], 9999), int(r["year"]))
    ys = list(first.values())
    exp += [(t, str(y), str(ys.count(y)), str(sum(z <= y for z in ys)), "false") for y in sorted(set(ys))]
g = [
    (r["taxon_id"], r["year"], r["squares_new"], r["squares_total"], r["provisional"])
    for r in csv.DictReader(open(D + "/taxon_spread.csv"))
]
if sorted(exp) != sorted(g):
    bad += 1
    print("spread", set(exp) ^ set(g))
ch = list(csv.DictReader(open(D + "/taxon_changes.csv")))
for r in ch:
    w = r["covered_before"] == "true" and r["covered_since"] == "true" and r["state"] in ("retained", "gained", "lost")
    if r["compared"] != str(w).lower():
        bad += 1
        print("changes", r)
print(len(rows), "rows of counts;", bad, "differences")
