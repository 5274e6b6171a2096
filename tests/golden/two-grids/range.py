"""Works out taxon_ranges.csv of this case from the records as README.md lays them out, and compares.

    python range.py expected          (the folder that holds taxon_ranges.csv)

pyproj 3.7.1 (PROJ) and shapely 2.1.1 (GEOS) under Python 3.11 found no difference. Nothing of the program is used. Counts
are compared exactly. Extents to 3 in 10,000: the corners come by PROJ's transforms here, a few metres from the program's; the
hull is found in PROJ's own gnomonic projection, and its area is that of pyproj's geodesic polygon.
"""

import csv, sys
from pyproj import Geod, Transformer
from shapely.geometry import MultiPoint

D = sys.argv[1]
# id taxon territory square(s) period ; from the page of the case. Squares: 10 km and 2 km corner (easting northing, km)
SK12, NO42, NA10, TQ37 = (410, 320), (340, 720), (10, 900), (530, 170)
O13 = (310, 230)
R = [
    ("rubrum", "britain", SK12, (410, 320), "earlier", 2),
    ("rubrum", "britain", SK12, (410, 320), "recent", 2),
    ("album", "britain", SK12, (410, 320), "earlier", 1),
    ("nigrum", "britain", SK12, (410, 320), "recent", 1),
    ("viride", "britain", SK12, (418, 328), "recent", 1),
    ("pair", "britain", SK12, None, "recent", 1),
    ("rubrum", "britain", NO42, (344, 724), "recent", 1),
    ("viride", "britain", NO42, (344, 724), "recent", 1),
    ("viride", "britain", NO42, None, "earlier", 1),
    ("album", "britain", NA10, (10, 904), "recent", 1),
    ("rubrum", "britain", NA10, (10, 904), "recent", 1),
    ("rubrum", "ireland", O13, (314, 234), "earlier", 2),
    ("rubrum", "ireland", O13, (314, 234), "recent", 2),
    ("viride", "ireland", O13, (314, 234), "recent", 1),
    ("album", "ireland", O13, (314, 234), "earlier", 1),
    ("rubrum", "britain", TQ37, (538, 176), "recent", 1),
    ("rubrum", "britain", None, None, "recent", 1),
    ("viride", "britain", SK12, (410, 320), "outside", 2),
    ("nigrum", "britain", SK12, (410, 320), "outside", 1),
    ("rubrum", "britain", SK12, (418, 328), "recent", 1),
    ("viride", "britain", SK12, None, "recent", 1),
    ("album", "britain", None, None, "recent", 1),
    ("viride", "britain", SK12, None, "earlier", 1),
]
UP = {"album": {"album", "pair"}, "nigrum": {"nigrum", "pair"}, "pair": {"pair"}, "rubrum": {"rubrum"}, "viride": {"viride"}}
TO = {g: Transformer.from_crs(c, "EPSG:4326", always_xy=True) for g, c in (("britain", "EPSG:27700"), ("ireland", "EPSG:29903"))}
PLANE = Transformer.from_crs("EPSG:4326", "+proj=gnom +lat_0=54.5 +lon_0=-3.5 +R=6371000", always_xy=True)
GEOD = Geod(ellps="WGS84")


def below(km2, thresholds):
    return "" if km2 is None else str(next((t for t in thresholds if km2 < t), ""))


def expected(taxon, territory, period):
    own = [r for r in R if taxon in UP[r[0]] and territory in ("all", r[1]) and period in ("all", r[4])]
    if not own:
        return None
    hectads = {(r[1], r[2]) for r in own if r[2]}
    tetrads = {(r[1], r[3]) for r in own if r[3]}
    coarse = hectads - {(r[1], r[2]) for r in own if r[3]}
    corners = [
        TO[unit].transform(1000 * (e + x * side), 1000 * (n + y * side))
        for squares, side in ((tetrads, 2), (coarse, 10))
        for unit, (e, n) in squares
        for x in (0, 1)
        for y in (0, 1)
    ]
    at = {PLANE.transform(*c): c for c in corners}
    extent = None
    if at:
        ring = [at[p] for p in list(MultiPoint(list(at)).convex_hull.exterior.coords)[:-1]]
        extent = abs(GEOD.polygon_area_perimeter([p[0] for p in ring], [p[1] for p in ring])[0]) / 1e6
    occupancy = 4.0 * len(tetrads) if tetrads else None
    if extent is not None and occupancy is not None:
        extent = max(extent, occupancy)
    return {
        "records": sum(r[5] for r in own),
        "tetrads": len(tetrads),
        "hectads": len(hectads),
        "hectads_without_tetrad": len(coarse),
        "occupancy_km2": "" if occupancy is None else str(occupancy),
        "occupancy_below_km2": below(occupancy, (10, 500, 2000)),
        "extent_below_km2": below(extent, (100, 5000, 20000)),
    }, extent


wrong, rows = [], list(csv.DictReader(open(f"{D}/taxon_ranges.csv")))
asked = [(t, u, p) for t in UP for u in ("all", "britain", "ireland") for p in ("all", "earlier", "recent")]
seen = {(r["taxon_id"], r["territory"], r["period"]): r for r in rows}
for key in asked:
    told, mine = seen.pop(key, None), expected(*key)
    if (told is None) != (mine is None):
        wrong.append((key, told, mine))
    elif told is not None:
        counts, extent = mine
        wrong += [(key, f, told[f], v) for f, v in counts.items() if told[f] != str(v)]
        if extent is None:
            wrong += [(key, told["extent_km2"])] if told["extent_km2"] else []
        elif abs(float(told["extent_km2"]) - extent) > max(0.06, 3e-4 * extent):
            wrong.append((key, "extent_km2", told["extent_km2"], extent))
print("\n".join(map(str, wrong + [(k, "not asked") for k in seen])) or f"no difference in {len(rows)} rows")
