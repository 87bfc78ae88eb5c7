"""Walks every figure of a sheet and recomputes it from its own explanation.

explain.py FOLDER MIXES: for every NAME.sheet.json in FOLDER there is NAME.why.json (the
explanation of the same sheet) and NAME.why.txt (the same for people). Checks that
  - every figure of the sheet has a reason, in order, and its value is that of the reason;
  - every formula, evaluated over its inputs, gives the value of its node;
  - every chain ends in a line of a file that bears the key and the text, and the text,
    turned into SI by the GNU units program, is the value; or in a source;
  - the numbers of the text for people come to what it says, in its own units.
"""
import glob
import json
import math
import os
import re
import subprocess
import sys

ONLY_COUNTED = {("ORDER", "n"), ("ORDER_HOT_WATER", "n"), ("ORDER_HOT_SAND", "n"),
                ("ORDER_HOT_CEMENT", "n"), ("BATCH_LINE", "n"), ("DAY_NUMBER", "n"), ("DAY_BATCH", "n"), ("DAY_NO_ROOM", "n"), ("OTHER", "n"), ("LOG_FILE", "n"), ("LOG_DEAD", "n"), ("LOG_OPEN", "n"),
                ("LEFT_SO_FAR", "n"), ("LEFT_OPEN", "n"), ("OTHER_BLEND", "n"), ("LEVEL_BED", "n"), ("C_BED_THIN", "n"),
                ("C_BED_THICK", "n"), ("GUARD", "n"), ("MARK_BLOCK", "n"),
                ("MARK_BUILT_UP", "n"), ("MARK_BED", "n"), ("MARK_SEAT", "n"),
                ("MARK_FRONT", "n"), ("MARK_BACK", "n"), ("MARK_LANDING_FRONT", "n"),
                ("MARK_LANDING_BACK", "n")}
faults = []


def fault(*words):
    faults.append(" ".join(str(w) for w in words))


def near_enough(a, b, share, scale=0.0):
    return abs(a - b) <= share * max(abs(a), abs(b), scale, 1e-12)


# ---- formulas ---------------------------------------------------------------------------

def functions(inputs, slack):
    """The functions of a formula; `slack` is what rounding may have left of a multiple."""
    def up(x, step):
        return math.ceil(x / step - slack * max(1, x / step)) * step

    def down(x, step):
        return math.floor(x / step + slack * max(1, x / step)) * step

    def near(x, step):
        return math.floor(x / step + 0.5 + slack) * step

    def mean(*xs):
        return sum(xs) / len(xs)

    def standard_error(*xs):
        m = mean(*xs)
        return math.sqrt(sum((x - m) ** 2 for x in xs) / (len(xs) - 1) / len(xs))

    def root_of_squares(*xs):
        return math.sqrt(sum(x * x for x in xs))

    def corners(xs):
        return list(zip(xs[::2], xs[1::2]))

    def area_of_corners(*xs):
        points = corners(xs)
        return abs(sum(a[0] * b[1] - b[0] * a[1]
                       for a, b in zip(points, points[1:] + points[:1]))) / 2

    def along_corners(xs, closed):
        points = corners(xs)
        return sum(math.dist(a, b)
                   for a, b in zip(points, points[1:] + points[:1] * closed))

    def saturation(c):  # Hyland and Wexler, Pa
        t = c + 273.15
        if c <= 0.01:
            return math.exp(-5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t**2
                            + 2.0747825e-9 * t**3 - 9.484024e-13 * t**4
                            + 4.1635019 * math.log(t))
        return math.exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t**2
                        - 1.4452093e-8 * t**3 + 6.5459673 * math.log(t))

    def humidity_of(air, dew_point):
        return min(1, saturation(dew_point) / saturation(air))

    def evaporation(concrete, air, humidity, wind):  # C, m/s, kg/(m2 s)
        over = (1.8 * concrete + 32)**2.5 - humidity * (1.8 * air + 32)**2.5
        return over * (1 + 0.4 * wind / 0.44704) * 1e-6 * 0.45359237 / 0.3048**2 / 3600

    # Temperatures in degrees Celsius: ice takes 80 of them to melt.
    def mix_of_frozen(binder, aggregate, moisture, water, binder_at, aggregate_at, water_at):
        heat = 0.22 * (binder * binder_at + aggregate * aggregate_at)
        ice = moisture * (0.5 * aggregate_at - 80)
        return ((heat + ice + water * water_at)
                / (0.22 * (binder + aggregate) + moisture + water))

    def water_for_frozen(wanted, binder, aggregate, moisture, water, binder_at, aggregate_at):
        cold = mix_of_frozen(binder, aggregate, moisture, water, binder_at, aggregate_at, 0)
        return (wanted - cold) * (0.22 * (binder + aggregate) + moisture + water) / water

    def ice_for(mixed, wanted, binder, aggregate, moisture, water, water_at):
        return ((mixed - wanted) * (0.22 * (binder + aggregate) + moisture + water)
                / (water_at + 80))

    def of_all(f):
        return lambda *xs: f(*(xs or inputs))

    return {"larger": max, "smaller": min, "up": up, "down": down, "near": near,
            "angle_of": math.atan2, "humidity_of": humidity_of, "evaporation": evaporation,
            "mix_of_frozen": mix_of_frozen, "water_for_frozen": water_for_frozen,
            "ice_for": ice_for,
             "area_of_corners": of_all(area_of_corners),
            "length_of_corners": of_all(lambda *xs: along_corners(xs, False)),
            "length_around_corners": of_all(lambda *xs: along_corners(xs, True)),
            "sqrt": math.sqrt, "sum": of_all(lambda *xs: sum(xs)), "mean": of_all(mean),
            "most": of_all(lambda *xs: max(xs)), "least": of_all(lambda *xs: min(xs)),
            "root_of_squares": of_all(root_of_squares),
            "standard_error": of_all(standard_error)}


def evaluate(formula, inputs, slack):
    names = functions([i[1] for i in inputs], slack)
    names.update(("of_" + name, value) for name, value in inputs)  # yield is Python's own
    formula = re.sub(r"([a-z_]+)(?![a-z_(])", r"of_\1", formula)
    return eval(formula, {"__builtins__": {}}, names)


# ---- where a chain ends -----------------------------------------------------------------

UNITS = {"in": "inch", "''": "inch", "ft": "feet", "'": "feet",
         "yd": "yard", "mm": "mm", "cm": "cm", "m": "m", "lb": "lb", "kg": "kg",
         "floz": "fluidounce", "mL": "milliliter", "qt": "quart", "gal": "gallon", "L": "liter", "l": "liter", "ft2": "feet^2",
         "m2": "m^2", "ft3": "feet^3", "yd3": "yard^3", "m3": "m^3", "h": "hour",
         "min": "minute", "s": "second", "days": "day", "day": "day",
         "mph": "mile/hour", "psi": "psi", "MPa": "MPa", "km": "km", "%": "0.01", "treads": "1", "": "1"}
SI = {"m": "m", "m2": "m^2", "m3": "m^3", "kg": "kg", "kg/m3": "kg/m^3", "s": "s",
      "share": "1", "m/s": "m/s", "1/s": "1/s", "m2/s": "m^2/s", "m/m2": "m^-1", "m3/m2": "m", "m3/s": "m^3/s", "pa": "Pa", "1": "1"}
CSV_UNITS = {"c": "C", "f": "F", "pct": "%", "mph": "mph", "km_h": "km/h", "in": "in", "mm": "mm"}
FIRST_OF_TWO = ("length", "along", "front_side", "flag_length", "block_length", "face_length")
known = {}
FOLDER = ""


def by_units(expression, to):
    if (expression, to) not in known:
        run = subprocess.run(["units", "-t", "-d", "15", expression, to],
                             stdout=subprocess.PIPE, text=True)
        known[expression, to] = run.stdout.strip()
    return float(known[expression, to])


def expression_of(text):
    """1-1/4 in, 4 ft 6 in, 2h30m, 3 treads/h, 80 lb/ft3 as the units program writes it."""
    over = ""
    text = re.sub(r"(\d)h(\d+)m$", r"\1 h \2 min", text)
    for sign, parts in (("¼", "1/4"), ("½", "1/2"), ("¾", "3/4"), ("′", "'"), ("″", "''"),
                        ("’", "'"), ("”", "''")):
        text = text.replace(sign, " " + parts if "/" in parts else parts)
    text = text.replace("fl oz", "floz")
    if re.search(r"/(h|ft3|yd3|m3|(100 )?ft2|m2|ft|m)$", text):
        text, over = text.rsplit("/", 1)
        over = " / (" + (f"100 {UNITS['ft2']}" if over == "100 ft2" else UNITS[over]) + ")"
    terms = []
    pattern = r"\s*(\d+(?:\.\d+)?(?![/.\d]))?(?:[- ]?(\d+)/(\d+))?\s*([a-zA-Z%']+[23]?|)"
    at = 0
    while at < len(text):
        m = re.match(pattern, text[at:])
        if m is None or m.end() == 0 or m.group(4) not in UNITS:
            raise ValueError(text)
        whole, top, bottom, unit = m.groups()
        unit = UNITS[unit]
        number = whole or "0"
        if top:
            number = f"({number} + {top}|{bottom})"
        terms.append(f"{number} {unit}")
        at += m.end()
    return "(" + " + ".join(terms) + ")" + over


def value_of(node):
    text = node["place"]["text"]
    if node["unit"] == "c":
        number, scale = re.fullmatch(r"(-?[\d.]+) ?([FC])", text).groups()
        return by_units(f"temp{scale}({number})", "tempC")
    if node["unit"] == "minor":
        return round(float(text) * 100)
    if re.fullmatch(r"\d\d?:\d\d", text):
        hours, minutes = text.split(":")
        return int(hours) * 3600 + int(minutes) * 60
    if " x " in text:
        text = text.split(" x ")[0 if node["name"] in FIRST_OF_TWO else 1]
    return by_units(expression_of(text), SI[node["unit"]])


def check_place(name, node, mixes, reference):
    place = node["place"]
    file, line, key, text = place["file"], place["line"], place["key"], place["text"]
    if line == 0:
        if not re.search(rf"^ +{key}\n(?:      .*\n)*?.*left out: {re.escape(text)}$",
                         reference, re.M):
            fault(name, "no such usual value:", place)
    elif file == "":  # an option of the command
        typed = open(f"{FOLDER}/{name}.options", encoding="utf-8").read().split("\n")
        option = "--" + key.replace("_", "-")
        given = [b for a, b in zip(typed, typed[1:]) if a == option]
        if option not in typed or text not in ("", *given):
            fault(name, "no such option:", place)
        if key == "vary":  # what came of it is told by the formulas above it
            return
    else:
        path = mixes + file[len("mixes"):] if file.startswith("mixes/") else file
        said = open(path, encoding="utf-8").read().split("\n")[line - 1]
        if text not in said:
            fault(name, f"{file}:{line} does not say {text}: {said}")
    if text == "" or not re.search(r"\d", text):  # a list, or a word with a source
        if text != "" and "source" not in node:
            fault(name, "a word is no value:", node)
        return
    try:
        if file.endswith(".csv"):  # the column names the unit
            plain = re.sub(r"[^a-z0-9]+", "_", key.lower().replace("%", "pct")).strip("_")
            unit = next(u for word, u in CSV_UNITS.items() if plain.endswith("_" + word))
            node = dict(node, place=dict(place, text=f"{text} {unit}"))
        value = value_of(node)
    except (ValueError, AttributeError) as problem:
        fault(name, place, "is not understood:", problem)
        return
    if not near_enough(value, node["value"], 1e-9):
        fault(name, place, "is", value, "not", node["value"])


# ---- one sheet --------------------------------------------------------------------------

def figures_of(rows):
    for row in rows:
        for key, value in row.items():
            if isinstance(value, list):
                yield from figures_of(value)
            elif isinstance(value, (int, float)) and (row["row"], key) not in ONLY_COUNTED:
                yield row["row"], key, value


def check_sheet(name, sheet, why):
    nodes = {n["node"]: n for n in why["nodes"]}
    shown = [f for b in sheet["blocks"] for f in figures_of(b["rows"])]
    told = why["figures"]
    nothing = any(r["row"] == "NO_MIX" for b in sheet["blocks"] for r in b["rows"])
    if len(shown) != len(told) or not (shown or nothing):
        fault(name, len(shown), "figures shown,", len(told), "explained")
    for (row, key, value), figure in zip(shown, told):
        if row != figure["row"] or not key.startswith(figure["figure"]):
            fault(name, row, key, "is explained as", figure["row"], figure["figure"])
        elif not near_enough(value, nodes[figure["node"]]["value"], 1e-9, 1e-3):
            fault(name, row, key, "is", value, "explained", nodes[figure["node"]]["value"])
    return len(shown)


def check_nodes(name, why, mixes, reference):
    nodes = {n["node"]: n for n in why["nodes"]}
    for node in nodes.values():
        if "formula" in node:
            inputs = [(nodes[i]["name"], nodes[i]["value"]) for i in node["inputs"]]
            # What lies half-way between two steps may go either way.
            got = [evaluate(node["formula"], inputs, slack) for slack in (1e-9, -1e-9)]
            scale = max([abs(v) for _, v in inputs] + [0]) if "-" in node["formula"] else 0
            if not any(near_enough(g, node["value"], 1e-9, scale) for g in got):
                fault(name, node, "comes to", got)
        elif "place" in node:
            check_place(name, node, mixes, reference)
        elif not node.get("source"):
            fault(name, "neither place nor source:", node)
    return len(nodes)


def check_text(name, text):
    """Lines of a value begin with its name; what hangs four columns deeper goes on."""
    lines = []
    for line in text.split("\n"):
        indent = len(line) - len(line.lstrip(" "))
        if len(line) > 80:
            fault(name, "over 80 columns:", line)
        if lines and indent == lines[-1][0] + 4:
            lines[-1][1] += " " + line.strip()
        else:
            lines.append([indent, line.strip()])
    count = 0
    for indent, line in lines:
        m = re.match(r"[a-z_]+(?: \([^=]*?\))? = (.*)", line)
        if indent == 0 or m is None or ", ..." in line:
            continue
        parts = m.group(1).split(" = ")
        if len(parts) < 2 or not re.match(r"-?[\d.]+( |$|;)", parts[-1]) \
                or re.search(r"[a-z_]+$", parts[-2]) \
                or re.search(r"(evaporation|humidity_of|frozen|ice_for)\(", parts[-2]):
            continue  # the last two hold in the units of their sources alone
        shown = float(re.match(r"-?[\d.]+", parts[-1]).group())
        count += 1
        scale = max(float(x) for x in re.findall(r"[\d.]*\d", parts[-2]))
        scale = scale if "-" in parts[-2] else 0.02
        # A number beside a whole one may be either side of it after six figures.
        got = [evaluate(parts[-2], [], slack) for slack in (0, 1e-5, -1e-5)]
        if not any(near_enough(g, shown, 1e-4, scale) for g in got):
            fault(name, line, "comes to", got)
    return count


def can_fail(folder, mixes, reference):
    """A value that is a thousandth off must be found, once in the sheet and once here."""
    why = json.load(open(folder + "/1.why.json"))
    sheet = json.load(open(folder + "/1.sheet.json"))
    made = next(n for n in why["nodes"] if "formula" in n and n["value"] != 0)
    read = next(n for n in why["nodes"] if "place" in n and n["place"]["line"] > 0
                and n["value"] != 0)
    for node in (made, read):
        before = len(faults)
        node["value"] *= 1.001
        check_nodes("broken", why, mixes, reference)
        node["value"] /= 1.001
        if len(faults) == before:
            return False
        del faults[before:]
    before = len(faults)
    del sheet["blocks"][0]["rows"][1:]
    check_sheet("broken", sheet, why)
    found = len(faults) > before
    del faults[before:]
    return found


def main(folder, mixes):
    global FOLDER
    FOLDER = folder
    reference = "\n".join(open(f).read() for f in glob.glob(folder + "/*.keys"))
    reference = re.sub(r"when\s+left\s+out:\s+", "when left out: ", reference)
    sheets = sorted(glob.glob(folder + "/*.sheet.json"))
    counts = [0, 0, 0]
    for path in sheets:
        name = os.path.basename(path).split(".")[0]
        why = json.load(open(f"{folder}/{name}.why.json"))
        counts[0] += check_sheet(name, json.load(open(path)), why)
        counts[1] += check_nodes(name, why, mixes, reference)
        counts[2] += check_text(name, open(f"{folder}/{name}.why.txt").read())
    if not can_fail(folder, mixes, reference):
        fault("a wrong value was taken as right")
    print("explain: %d sheets, %d figures, %d values, %d formulas as printed; %d faults"
          % (len(sheets), *counts, len(faults)))
    for words in faults[:20]:
        print("FAILED", words)
    return 1 if faults or len(sheets) < 40 or min(counts) < 1000 else 0


sys.exit(main(sys.argv[1], sys.argv[2]))
