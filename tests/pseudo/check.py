"""Runs the program in the pseudo-language and looks at all that it prints: check.py
CHECKOUT FOLDER, the folder being one that make.py filled."""
import json
import pathlib
import re
import subprocess
import sys
import unicodedata

import polib

TOP, WORK = map(pathlib.Path, sys.argv[1:])
PROGRAM = "bin/gaugebox"
CATALOG = {e.msgid: e.msgstr for e in
           polib.mofile(str(WORK / "share/locale/xx/LC_MESSAGES/gaugebox.mo"))}
LABELS = [CATALOG[e.msgid] for e in polib.pofile(str(TOP / "src/po/gaugebox.pot"))
          if "A label of the sheet" in e.comment]

# Plain words that may stand anywhere: unit symbols, the program's own name, and bodies
# that write codes.
UNITS = set("ft in lb kg qt mL oz fl yd mm min mph km gal psi MPa gaugebox "
            "IRC ADA NFPA".split())
# What is told by argp and the C library, who translate their words themselves.
NOT_OURS = [
    "Usage:", "[OPTION...]", "  or: ", "Give this help list", "Give a short usage message",
    "Mandatory or optional arguments to long options are also mandatory or optional",
    "for any corresponding short options.", "No such file or directory",
    "Permission denied", "unrecognized option", "option", "requires an argument",
    "for more information.", "Try `", "' or `",
]
# Choices of options, as they are typed.
TYPED = ["us|metric", "text|json|csv", "job|mixes|materials|stones|prices"]
COMMANDS = ["sheet", "day", "log", "remaining", "takeoff", "price", "steps", "concrete", "mix", "check", "keys", "starter"]
KINDS_OF_FILE = ["job", "mixes", "materials", "stones", "prices"]
LAYER_KINDS = set("bed slurry joint pointing slab core parge block volume "
                  "prism wedge stepped stair pier".split())
MISSING_READINGS = {"NA", "nan"}  # as other programs write them


def ids_in(folder):
    return sorted(f"{file.stem}/{name}" for file in folder.glob("*.cfg")
                  if file.stem not in ("materials", "stones")
                  for name in re.findall(r'\{ name = "([^"]+)"', file.read_text()))


EXPOSURES = re.findall(r'^    \[GB_\w+\] = "([^"]+)"',
                       (TOP / "src/engine/exposure.c").read_text(), re.M)
SHIPPED = ids_in(TOP / "mixes")
CLAIMING = ids_in(WORK / "claims")
MIXES = SHIPPED + CLAIMING
OF_JOBS = sorted("own/" + name for job in [*(TOP / "tests/jobs").glob("*-good/job.cfg"),
                                           *(TOP / "examples").glob("*/job.cfg")]
                 for name in re.findall(r'\{ name = "([^"]+)";\s+like', job.read_text()))
MATERIALS = [name for file in ("materials.cfg", "stones.cfg")
             for name in re.findall(r'\{ name = "([^"]+)"',
                                    (TOP / "mixes" / file).read_text())]

faults = []
looked_at = {}


def fault(what, text):
    faults.append(f"{what}: {text}")


def seen(kind, count=1):
    looked_at[kind] = looked_at.get(kind, 0) + count


def run(*arguments, status=(0,), language="xx"):
    """Standard output and the faults of one run; its exit status must be one of those."""
    command = [PROGRAM, *arguments] + (["--lang", language] if language else [])
    done = subprocess.run(command, cwd=WORK, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                          check=False)
    shown = " ".join(arguments)
    if done.returncode not in status:
        fault(shown, f"exit status {done.returncode}: {done.stderr.decode()}")
    return done.stdout.decode(), done.stderr.decode()


MIX_KEYS = re.findall(r"^ {2}([a-z_]+)(?:  \(required\))?$",
                      run("keys", "mixes", language=None)[0], re.M)


# ---- words ---------------------------------------------------------------------------


def plain_words(text, allowed=()):
    """Words of two or more plain letters that nothing excuses."""
    text = re.sub(r"(?<![\w])\S*\.(?:cfg|csv)\b", "", text)
    text = re.sub(r"\b[0-9a-f]{8}\b", "", text)  # numbers of plans
    for mix in sorted(MIXES + OF_JOBS + EXPOSURES, key=len, reverse=True):
        text = re.sub(rf"(?<![\w/-]){re.escape(mix)}(?![\w/-])", "", text)
    words = re.findall(r"(?<![^\W\d_])[A-Za-z]{2,}(?![^\W\d_])", text)
    return [word for word in words if word not in UNITS and word not in allowed]


def no_plain_words(what, text, allowed=()):
    seen("texts")
    for word in plain_words(text, allowed):
        fault(what, f"a word that no one translated: {word}")


def without_quoted(text):
    """Keys, values and examples stand in quotes, code in brackets."""
    while re.search(r"\{[^{}]*\}", text):
        text = re.sub(r"\{[^{}]*\}", "", text)
    return re.sub(r"'[^'\n]*'|\"[^\"\n]*\"|`[^`\n]*`", "", text)


def without_theirs(text):
    text = re.sub(r"\s+", " ", text)
    for words in NOT_OURS + TYPED:
        text = text.replace(words, "")
    return text


# ---- layout --------------------------------------------------------------------------


def columns(text):
    return sum(0 if unicodedata.combining(c) else
               2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def no_long_line(what, text):
    for line in text.split("\n"):
        seen("lines")
        if columns(line) > 80:
            fault(what, f"{columns(line)} columns: {line}")


def label_is_whole(line):
    """It stands in its ten columns, or alone."""
    return any(line == label or (line.startswith(label) and columns(label) <= 10 and
                                 line[len(label):11].strip() == "")
               for label in LABELS)


def no_cut_label(what, text):
    lines = text.split("\n")
    for i, line in enumerate(lines):
        if line[:1] in ("", " ", "=", "-") or lines[i - 1].startswith("==="):
            continue
        seen("labels")
        if not label_is_whole(line):
            fault(what, f"no label begins this line: {line}")


def cells_stand_below(what, lines, heads):
    """Every line has a cell that begins in the column of each head."""
    at = [columns(lines[0][:lines[0].index(head)]) for head in heads]
    for line in lines[1:]:
        seen("table rows")
        for column in at:
            if line[column:column + 1] in ("", " ") or line[column - 1] != " ":
                fault(what, f"no cell in column {column + 1}: {line}")


def water_tables(what, text):
    """In a table that is too wide, the first cell stands on a line above the others."""
    heads = [CATALOG[word] for word in ("first", "usual", "never past")]
    lines = text.split("\n")
    for i, line in enumerate(lines):
        if not all(head in line for head in heads) or not re.search("  ", line.strip()):
            continue
        table = [line]
        above = False
        for other in lines[i + 1:]:
            if re.search(r"(\)|\d\.\d+)$", other):
                table.append(other)
                above = False
            elif above or not re.search(r"^ {11}[ >] .* %$", other):
                break
            else:
                above = True
        cells_stand_below(what, table, heads)


def one_column(what, text, cell, kind):
    """The cells that a pattern finds in neighbouring lines begin in one column."""
    before = None
    for line in text.split("\n"):
        found = re.search(cell, line)
        if found and before is not None:
            seen(kind)
            if columns(line[:found.start(1)]) != before:
                fault(what, f"not below the cell above it: {line}")
        before = columns(line[:found.start(1)]) if found else None


def without_keys_of_mixes(text):
    """Where a mix takes its keys from, below the label FROM."""
    block = re.compile(r"^%s .*\n(?: {11}.*\n)*" % re.escape(CATALOG["FROM"]), re.M)
    key = re.compile(r"(?<![\w/-])(?:%s)(?![\w/-])" % "|".join(MIX_KEYS))  # no part of an id
    return block.sub(lambda m: key.sub("", m.group()), text)


def look_at_sheet(what, text):
    no_plain_words(what, without_keys_of_mixes(text))
    no_long_line(what, text)
    no_cut_label(what, text)
    water_tables(what, text)
    one_column(what, text, r"\d\.\d\d  (Ω\d+)", "sums")
    one_column(what, text, r"^ +\S+ +((?:%s)) +\d" % "|".join(map(re.escape, MIXES + OF_JOBS)),
               "layers")


# ---- what is run ---------------------------------------------------------------------


def look_at_steps(what, text):
    """Tables stand at the margin, and a section is drawn."""
    no_plain_words(what, re.sub(r"^[ #:%o.]+$", "", text, flags=re.M))
    no_long_line(what, text)


def look_at_csv(what, text):
    lines = text.split("\r\n")
    # Columns and rows have names for programs; the first cell is the plan's number.
    no_plain_words(what, "\n".join(line.split(",", 2)[2] for line in lines[1:] if line))
    seen("csv lines", len(lines))


def look_at_explanation(what, words):
    """Names of rows, figures, values and keys stand for themselves in a formula."""
    told = json.loads(run(*words, "--explain", "--format", "json")[0])
    names = {word for figure in told["figures"] for key in ("row", "top", "figure")
             for word in figure[key].split("_")}
    for node in told["nodes"]:
        keys = node["name"] + " " + node.get("formula", "") + " " + \
            node.get("place", {}).get("key", "")
        names |= set(re.findall("[A-Za-z]+", keys))
    # What was typed is told as it was.
    names |= {word for typed in words[1:] for word in re.findall("[A-Za-z]+", typed)}
    text = without_keys_of_mixes(run(*words, "--explain")[0])
    text = re.sub(r"\b(?:%s)\b" % "|".join(MATERIALS), "", text)
    # Values as a file has them, which may run over the end of a line, and their units.
    text = re.sub(r'"[^"]{1,60}"', "", text)
    no_plain_words(what, text.replace("treads/h", ""), names)
    no_long_line(what, text)
    seen("explanations")


def sheets():
    for job in sorted((WORK / "jobs").glob("good/*/job.cfg")):
        job = str(job.relative_to(WORK))
        for units in ("us", "metric"):
            for command in ("sheet", "day", "takeoff", "price"):
                what = f"{command} {job} --units {units}"
                look_at_sheet(what, run(command, job, "--units", units)[0])
                seen("sheets of examples")
                look_at_explanation(what, [command, job, "--units", units])
                if command != "sheet":
                    look_at_csv(what, run(command, job, "--units", units, "--format",
                                          "csv")[0])
    for job in sorted((WORK / "jobs/tests").glob("*-good/job.cfg")):
        job = str(job.relative_to(WORK))
        for command in ("sheet", "takeoff"):
            look_at_sheet(f"{command} {job}", run(command, job)[0])
            seen("sheets of tests")


def logs():
    folder = WORK / "jobs/good/library-entrance"
    names = re.findall(r'\{ name = "([^"]+)"; kind', (folder / "job.cfg").read_text())
    text = (folder / "log.csv").read_text()
    for plain, name in zip(("treads", "landing"), names):
        text = text.replace(" " + plain, " " + name)
    (folder / "log.csv").write_text(text)
    for words in (["log"], ["remaining", "--on-hand", "bed/stiff-1-4=1/4"],
                  ["remaining", "--on-hand", "bed/stiff-1-4=9"]):
        words = [words[0], *(f"jobs/good/library-entrance/{f}" for f in ("job.cfg", "log.csv")),
                 *words[1:]]
        look_at_steps(" ".join(words), run(*words)[0])
        seen("logs")
        look_at_explanation(" ".join(words), words)


def steps():
    for words in (["jobs/good/terrace-steps/job.cfg"],
                  ["--rise", "49in", "--tread", "14in", "--pitch", "1/4in/ft"],
                  ["--rise", "49in", "--tread", "14in", "--slab", "2in", "--course", "4in"],
                  ["--rise", "49in", "--tread", "14in", "--slab", "2in", "--count", "7",
                   "--course", "6in", "--footing", "8in", "--laser", "3ft"],
                  ["--rise", "1.2m", "--length", "3m", "--build", "solid", "--stone",
                   "150mm", "--overlap", "50mm", "--units", "metric"],
                  ["--rise", "14ft", "--tread", "14in", "--count", "24", "--top", "sill",
                   "--landing", "4ft", "--face", "6in"],
                  ["--rise", "5in", "--tread", "3ft"]):
        what = "steps " + " ".join(words)
        look_at_steps(what, run("steps", *words)[0])
        look_at_explanation(what, ["steps", *words])
        if "3ft" != words[-1] or len(words) > 4:  # one that nothing fits has no table
            look_at_csv(what, run("steps", *words, "--format", "csv")[0])
        seen("runs of steps")


def concretes():
    trial = ["--trial-water", "20lb", "--trial-cement", "50lb", "--trial-stone", "150lb",
             "--trial-sand", "110lb"]
    for words in (*([mix] for mix in SHIPPED if mix.startswith("proportioned/")),
                  ["proportioned/steps-air", "--mixer", "150L", "--units", "metric"],
                  ["--strength", "3000psi"],
                  ["--strength", "3000psi", "--exposure", "irc-severe,aci-318-f2,en-206-xf4"],
                  ["--strength", "3000psi", "--make", "27ft3", "--mixer", "4ft3"],
                  ["--average", "30MPa", "--units", "metric", *trial, "--trial-unit-mass",
                   "2300kg/m3"],
                  ["--ratio", "0.45", "--water", "320lb/yd3", "--air-content", "1%"],
                  ["--strength", "2800psi", "--deviation", "400psi", "--tests", "22", "--air",
                   "mild", "--attack", "sulfate", "--resisting", "--shape", "rounded",
                   "--placing", "pumped", "--sand-moisture", "6%", *trial, "--trial-full",
                   "54lb", "--trial-empty", "18.4lb", "--trial-measure", "0.25ft3",
                   "--trial-slump", "2in", "--trial-air", "5%"]):
        what = "concrete " + " ".join(words)
        look_at_steps(what, run("concrete", *words)[0])
        look_at_explanation(what, ["concrete", *words])
        seen("concretes")


def changes():
    library = "jobs/good/library-entrance/"
    terrace = "jobs/good/terrace-steps/"
    for words in ([terrace + "job.cfg", "--against", library + "job.cfg"],
                  [library + "job.cfg", "--vary", "bed depth +1/4in", "--prices",
                   library + "prices.cfg"],
                  [terrace + "job.cfg", "--vary", "base depth +2in", "--units", "metric"],
                  [library + "job.cfg", "--against", library + "job.cfg"]):
        what = "takeoff " + " ".join(words)
        look_at_steps(what, run("takeoff", *words)[0])
        look_at_explanation(what, ["takeoff", *words])
        seen("changes")
    for change in ("bed", "bed depth", "beds depth 1in", "cellar count 2", "bed depth -3in",
                   "treads count 1.5", "slurry depth 1in", "treads rise 3mi", "gold waste 5%"):
        look_at_faults(change, run("takeoff", library + "job.cfg", "--vary", change,
                                   status=(2,))[1])


def mixes():
    families = {word for mix in MIXES for word in mix.split("/")[0].split("-")}
    for words in (["mix"], ["mix", "bed"], ["mix", "--for", "pointing"],
                  ["mix", "mortar", "--for", "core"]):
        listed = run(*words)[0]
        no_plain_words(" ".join(words), listed, families)
        no_long_line(" ".join(words), listed)
        # Ids stand at the margin, as labels do.
        no_cut_label(" ".join(words), re.sub(r"^\S+/.*\n", "", listed, flags=re.M))
        seen("lists")
    listed = run("mix")[0]
    for mix in CLAIMING:
        look_at_sheet(f"mix {mix}", run("mix", mix, "--mixes", "claims")[0])
        seen("claims")
    for mix in SHIPPED:
        if mix not in listed:
            fault("mix", f"{mix} is not listed")
        for amount in ([], ["--make", "3ft3"], ["--make", "40L", "--waste", "10%"],
                       ["--bags", "1/2"], ["--bags", "7", "--units", "metric"]):
            look_at_sheet(f"mix {mix} {amount}", run("mix", mix, *amount)[0])
            seen("mixes")


def look_at_faults(what, text):
    for line in text.split("\n"):
        line = re.sub(r"^(?:gaugebox mix|\S+?):(?:\d+:)? ", "", line)
        line = re.sub(r"\b(?:%s)\b" % "|".join(MATERIALS), "", line)
        line = re.sub(r": (?:[a-z0-9_-]+, )+[a-z0-9_-]+$", ":", line)  # known keys, uses
        line = re.sub(r"(?<=: )[a-z_]+ = ", "", without_quoted(line))
        line = without_theirs(line)
        no_plain_words(what, line, LAYER_KINDS | MISSING_READINGS)
        seen("fault lines")


def checks():
    for job in sorted((WORK / "jobs").glob("*/*/job.cfg")):
        job = str(job.relative_to(WORK))
        out, err = run("check", job, status=(0, 1, 3))
        look_at_faults(f"check {job}", err)
        no_plain_words(f"check {job}", out)
    look_at_faults("check", run("check", "nowhere.cfg", status=(3,))[1])
    look_at_faults("check", run("check", "bin", status=(3,))[1])


def cases():
    """Own mixes, price books, logs and weather with faults, from the whole-program cases."""
    speaker = WORK / "bin/speaker"
    speaker.write_text(f'#!/bin/sh\nexec "{WORK}/{PROGRAM}" --lang xx "$@"\n')
    speaker.chmod(0o755)
    for pattern in ("own-*", "price-*", "check-*", "five-*", "more-*", "mix-*", "day-f*", "hours-f*",
                    "log-f*"):
        for case in sorted((TOP / "tests/cli").glob(pattern)):
            empty = WORK / "cases" / case.name
            empty.mkdir(parents=True)
            done = subprocess.run(["bash", str(case / "run.sh")], cwd=empty, check=False,
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                                  env={"GAUGEBOX": str(speaker), "CASE": str(case),
                                       "EXAMPLES": str(TOP / "examples"),
                                       "PATH": "/usr/bin:/bin"})
            told = [line for line in done.stdout.decode().split("\n")
                    if f": {CATALOG['error']}: " in line]
            look_at_faults(case.name, "\n".join(told))
            seen("faults of cases", len(told))


def choices_of(text):
    return set(re.findall(r"[a-z]+", " ".join(re.findall(r'"([a-z][a-z ]*)"', text))))


def keys():
    for kind in KINDS_OF_FILE:
        english = run("keys", kind, language=None)[0]
        names = set(re.findall(r"^ *([a-z_]+)(?:  \(required\))?$", english, re.M))
        text = run("keys", kind)[0]
        no_long_line(f"keys {kind}", text)
        helps = "\n".join(line for line in text.split("\n")
                          if re.sub(r"  \(.*\)$", "", line.strip()) not in names)
        helps = re.sub(r"\n +", " ", helps)  # code and quotes run over the line's end
        helps = re.sub(r"\( \{.*?\} \)", "", helps)
        helps = re.sub(r"\b(?:%s)\b" % "|".join(MATERIALS), "", helps)
        # Bounds are written as in a file, where days are a unit.
        no_plain_words(f"keys {kind}", without_quoted(helps),
                       choices_of(english) | {"days"})
        seen("keys", len(names))
    look_at_faults("keys", run("keys", "x", status=(2,))[1].replace("gaugebox keys: ", ""))


def starter():
    text = run("starter")[0]
    for line in text.split("\n"):
        # What stays plain is code: settings, and values in quotes but for names.
        line = re.sub(r'\b(name|place|emergency|rinse_water) = "([^"]*)"', r"\2", line)
        line = re.sub(r'"[^"]*"|\b[a-z_]+ =', "", line)
        no_plain_words("starter", line)
        seen("starter lines")
    (WORK / "starter.cfg").write_text(text)
    run("check", "starter.cfg")


def helps():
    for command in COMMANDS:
        text = re.sub(r"--[a-z-]+", "", run(command, "--help")[0])
        text = text.replace(f"gaugebox {command}", "")
        no_plain_words(f"{command} --help", without_theirs(text))
        seen("helps")
    for words in (["help"], ["--help"]):
        text = re.sub(r"^  (%s) " % "|".join(COMMANDS), "", run(*words)[0], flags=re.M)
        no_plain_words(" ".join(words), text)
        seen("helps")
    done = subprocess.run([PROGRAM, "--lang", "xx"], cwd=WORK, capture_output=True,
                          check=False)
    if done.returncode != 2:
        fault("no command", f"exit status {done.returncode}")


def usage_faults():
    for words in (["sheet"], ["sheet", "a", "b"], ["price"], ["check"], ["keys", "a", "b"],
                  ["mix", "a", "b"], ["mix", "--bags", "0"], ["mix", "--make", "x"],
                  ["mix", "--make", "1 L", "--bags", "1"], ["mix", "--area", "1 m2"],
                  ["mix", "--waste", "10%"], ["mix", "--waste", "900%", "--bags", "1"],
                  ["mix", "--bags", "1"], ["mix", "--units", "x"], ["mix", "--format", "x"],
                  ["mix", "--format", "csv"], ["starter", "--format", "json"],
                  ["mix", "x/x", "--area", "1 m2", "--depth", "9 m"],
                  ["mix", "x/x", "--bucket", "9 m3", "--bags", "1"],
                  ["mix", "--for", "bedd"], ["mix", "--for", "x"],
                  ["mix", "bed", "--bags", "1"], ["mix", "--explain"], ["mix", "x/x", "--for", "bed"]):
        text = run(*words, status=(2,))[1]
        text = re.sub(r"^gaugebox \w+: ", "", re.sub(r"--[a-z]+", "", text))
        text = re.sub(r"Try `.*", "", text, flags=re.S)
        no_plain_words(" ".join(words), without_theirs(without_quoted(text)), LAYER_KINDS)
        seen("usage faults")


def ways_to_choose():
    """The option counts wherever it stands; the environment never does."""
    job = "jobs/good/library-entrance/job.cfg"
    wanted = run("takeoff", job)[0]
    for words in (["--lang", "xx", "takeoff", job], ["--lang=xx", "takeoff", job],
                  ["takeoff", "--lang", "en", job, "--lang=xx"], ["takeoff", "--la=xx", job]):
        if run(*words, language=None)[0] != wanted:
            fault(" ".join(words), "is not in that language")
        seen("ways to choose")
    english = run("takeoff", job, language=None)[0]
    for environment in ({"LANGUAGE": "xx", "LC_ALL": "C.UTF-8"}, {"LANG": "xx"}):
        done = subprocess.run([PROGRAM, "takeoff", job], cwd=WORK, env=environment,
                              capture_output=True, check=True)
        if done.stdout.decode() != english:
            fault(str(environment), "changes what is printed")
    for command in (["takeoff", job], ["check", job]):
        if json.loads(run(*command, "--format", "json")[0])["language"] != "xx":
            fault(" ".join(command), "has another language in its JSON")
    for unknown in ("zz", "../xx", "", "english"):
        told = run("mix", "--lang", unknown, status=(2,), language=None)[1]
        if told != f"gaugebox: --lang '{unknown}' is not known; known are: en, xx\n":
            fault(f"--lang {unknown}", told)


# ---- the check itself can fail -------------------------------------------------------


def caught(look, *arguments):
    """How many faults a look at something bad finds; they do not count."""
    before = len(faults)
    look(*arguments)
    found = len(faults) - before
    del faults[before:]
    return found


def can_fail():
    job = "jobs/good/library-entrance/job.cfg"
    english = run("sheet", job, language=None)[0]
    sheet = run("sheet", job)[0]
    bad = {
        "English": caught(no_plain_words, "x", english) > 100,
        "one word": caught(no_plain_words, "x", sheet + " usual") == 1,
        "one word in a fault": caught(look_at_faults, "x", "a.cfg:1: ŕŕ: crew") == 1,
        "a long line": caught(no_long_line, "x", "é" * 81) == 1,
        "a wide line": caught(no_long_line, "x", "水" * 41) == 1,
        "a line of 80": caught(no_long_line, "x", "é" * 80) == 0,
        "a cut label": caught(no_cut_label, "x", sheet.replace(LABELS[0], LABELS[0][:-2])) > 0,
        "a label into the words": caught(no_cut_label, "x", LABELS[0] + "x") == 1,
        "a shifted cell": caught(water_tables, "x", sheet.replace(" %  ", " %   ", 1)) > 0,
        "a shifted sum": caught(one_column, "x", "1.00  Ω1\n11.00  Ω1", r"\d\d  (Ω\d+)",
                                "x") == 1,
    }
    for what, good in bad.items():
        if not good:
            fault("the check itself", f"does not tell {what}")
    looked_at.clear()


def main():
    can_fail()
    for look in (sheets, logs, steps, concretes, changes, mixes, checks, cases, keys, starter, helps, usage_faults,
                 ways_to_choose):
        look()
    least = {"sheets of examples": 12, "logs": 3, "sheets of tests": 30, "csv lines": 40, "mixes": 50,
              "lists": 4, "runs of steps": 7, "concretes": 11, "changes": 4,
             "claims": 10,
             "fault lines": 100, "faults of cases": 25, "keys": 80, "starter lines": 40, "helps": 9,
             "usage faults": 24, "ways to choose": 4, "labels": 500, "table rows": 100, "sums": 9, "layers": 5}
    for kind, count in least.items():
        if looked_at.get(kind, 0) < count:
            fault("the check itself", f"looked at {looked_at.get(kind, 0)} {kind}")
    print("\n".join(faults[:60]))
    print("pseudo: " + ", ".join(f"{n} {kind}" for kind, n in sorted(looked_at.items())) +
          f"; {len(faults)} faults")
    sys.exit(len(faults) > 0)


main()
