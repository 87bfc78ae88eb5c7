# What is varied equals what is edited by hand; a change turned round is its negative; one
# tread less takes exactly one tread's share from every layer and need.
library=$EXAMPLES/library-entrance/job.cfg
sed 's/count = 7/count = 6/' "$library" >fewer.cfg
sed 's/depth = "1-1\/4 in"/depth = "1-1\/2 in"/' "$library" >deeper.cfg
without_plan() { grep -v '^PLAN'; }
"$GAUGEBOX" takeoff "$library" --vary "treads count -1" | without_plan >varied.txt
"$GAUGEBOX" takeoff fewer.cfg --against "$library" | without_plan | cmp - varied.txt && echo "count: same"
"$GAUGEBOX" takeoff "$library" --vary "treads bed depth +1/4in" | without_plan >varied.txt
"$GAUGEBOX" takeoff deeper.cfg --against "$library" | without_plan | cmp - varied.txt && echo "depth: same"
"$GAUGEBOX" takeoff fewer.cfg --against "$library" --format json >there.json
"$GAUGEBOX" takeoff "$library" --against fewer.cfg --format json >back.json
"$GAUGEBOX" takeoff "$library" --format json >old.json
cat >laws.py <<'END'
import json
def rows(name):
    return [r for b in json.load(open(name))["blocks"] for r in b["rows"]]
def key(row, start):
    return next(k for k in row if k.startswith(start))
there, back = rows("there.json"), rows("back.json")
changes = [r for r in there if "difference" in str(list(r))]
assert len(changes) > 8
assert len(there) == len(back)
for a, b in zip(there, back):
    if a not in changes:
        continue
    d = key(a, "difference")
    assert a["row"] == b["row"] and abs(a[d] + b[d]) < 1e-9 * abs(a[d]), (a, b)
    assert abs(a[key(a, "before")] - b[key(b, "after")]) < 1e-12
    assert abs(a[key(a, "after")] - a[key(a, "before")] - a[d]) < 1e-9
print("turned round:", len(changes), "rows")
laid = {r["kind"][0]["row"]: r["net_m3"] for r in rows("old.json")
        if r["row"] == "LAYER_LAID" and r["piece"] == "treads"}
waste = {"bed/stiff-1-4": 0.10, "slurry/neat": 0.20}
kinds = {"bed/stiff-1-4": "KIND_BED", "slurry/neat": "KIND_SLURRY"}
seen = 0
for r in changes:
    if r["row"] == "CHANGE_LAYER":
        assert abs(r["difference_m3"] + laid[r["which"][0]["row"]] / 7) < 1e-9, r
        seen += 1
    if r["row"] in ("CHANGE_NET", "CHANGE_GROSS"):
        more = 1 + waste[r["name"]] if r["row"] == "CHANGE_GROSS" else 1
        assert abs(r["difference_m3"] + laid[kinds[r["name"]]] / 7 * more) < 1e-9, r
        seen += 1
assert seen == 6, seen
print("one tread less:", seen, "figures")
END
python3 laws.py
# A run: its count is that of the risers, so one riser less is one tread less of five and
# of four, in every layer, stone and filling.
terrace=$EXAMPLES/terrace-steps/job.cfg
"$GAUGEBOX" takeoff "$terrace" --format json >old.json
"$GAUGEBOX" takeoff "$terrace" --vary "upper run count -1" --vary "lower run count -1" \
    --format json >there.json
cat >runs.py <<'END'
import json
def rows(name):
    return [r for b in json.load(open(name))["blocks"] for r in b["rows"]]
old, changes = rows("old.json"), rows("there.json")
treads = {"upper run": 5, "lower run": 4}
laid = {}
for r in old:
    if r["row"] in ("LAYER_LAID", "LOOSE_LAID", "LOOSE_FILLED", "LOOSE_DUG"):
        laid[r["piece"], r["kind"][0]["row"]] = r["net_m3"]
    if r["row"] == "AREA":
        laid[piece, "area"] = r["bedded_m2"]
    if r["row"] == "PIECE":
        piece = r["name"]
    if r["row"] == "STONE_LINE":
        ordered = r["ordered"], r["freight_kg"]
        laid[r["piece"], "stone"] = ordered[1] / ordered[0] * treads[r["piece"]]
seen = 0
for r in changes:
    of = {"CHANGE_LAYER": None, "CHANGE_LOOSE": None, "CHANGE_BEDDED": "area",
          "CHANGE_STONE": "stone"}
    if r["row"] not in of:
        continue
    what = of[r["row"]] or r["which"][0]["row"]
    d = next(v for k, v in r.items() if k.startswith("difference"))
    part = 1 / treads[r["name"]]
    if what in ("KIND_BASE", "KIND_EXCAVATION"):  # under all of them: 6 in beyond, 2 in overlap
        part = 16 / (4 * 16 + 2 + 2 * 6)
    want = -laid[r["name"], what] * part
    assert abs(d - want) < 1e-9 * abs(want) + 1e-11, (r, want)
    seen += 1
print("one riser less:", seen, "figures")
END
python3 runs.py
