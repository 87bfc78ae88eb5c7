"""How far computed yields lie from printed ones: spread.py TEST_PUBLISHED runs the outside
checks, takes the deviation of one row for each printed mix that is no known difference,
and expects the root mean squares that src/engine/yield.c states beside its constants."""
import math
import re
import subprocess
import sys

# How many rows, and what their names look like: cement in a volume of mortar, or mortar
# from a volume of sand. White mortars are those of portland again, and so are the shipped
# Types S, N and O.
MORTARS = [
    (4, r"C270 [MSNO] [^ ]+, cement lb/ft3"),
    (7, r"(?!white-)[^ ]+, mortar from 1 ft3 of damp sand, ft3"),
    (6, r"CPWD 1:\d cement kg/m3"),
    (5, r"rule 38 1:[^ ]+ sacks"),
    (5, r"1908 1:[^ ]+ bbl/yd3"),
    (2, r"CMAA [^ ]+ [^ ]+ bags of 40 kg"),
    (1, r"plaster bags of 50 kg"),
]
CONCRETES = [
    (10, r"small-concrete/[^ ]+, cement lb/yd3"),
    (2, r"concrete/[^ ]+, barrels in 1 yd3"),
    (3, r"concrete-25kg/[^ ]+, cement in 1 m3 kg"),
]
ROW = re.compile(r"\] ([^\[\]]+): printed [^ ]+, ours [^ ]+, off ([+-][\d.]+) %(.*)")


def deviations(rows, wanted, faults):
    found = []
    for count, name in wanted:
        mine = [off for id_, off in rows if re.fullmatch(name, id_)]
        if len(mine) != count:
            faults.append(f"{len(mine)} rows, not {count}, are called {name}")
        found += mine
    return found


def main():
    log = subprocess.run([sys.argv[1], "--verbose", "--color=never"], check=True,
                         stdout=subprocess.PIPE, stderr=subprocess.STDOUT).stdout.decode()
    rows = [(m.group(1), float(m.group(2))) for m in map(ROW.search, log.split("\n"))
            if m and "known:" not in m.group(3)]
    faults = []
    for what, wanted, stated in (("mortars", MORTARS, 3.75), ("concretes", CONCRETES, 6.27)):
        found = deviations(rows, wanted, faults)
        measured = math.sqrt(sum(off * off for off in found) / max(1, len(found)))
        print(f"{what}: {measured:.2f} % over {len(found)}, {min(found)} to {max(found)} %")
        if round(measured, 2) != stated:
            faults.append(f"yield.c states {stated} % for {what}")
    print("\n".join(faults))
    sys.exit(len(faults) > 0)


main()
