"""Looks for translations that lose or make up what the program fills in."""
import glob
import re
import sys

import polib

PLACES = re.compile(r"\{[a-z_]+\}|%(?:\d+\$)?(?:\.\d+|\.\*)?(?:zu|[sdc%])")


def places(text, formatted):
    """The places of a message in no order, and its tabs; %1$s is the same place as %s."""
    found = PLACES.findall(text)
    if not formatted:
        found = [place for place in found if place[0] == "{"]
    return sorted(re.sub(r"\d+\$", "", place) for place in found), text.count("\t")


def faults(entry):
    formatted = "c-format" in entry.flags
    wanted = [places(entry.msgid, formatted)]
    translations = [entry.msgstr] if not entry.msgid_plural else entry.msgstr_plural.values()
    if entry.msgid_plural:
        wanted.append(places(entry.msgid_plural, formatted))
    return [text for text in translations if text and places(text, formatted) not in wanted]


def message(msgid, msgstr, flags=()):
    return polib.POEntry(msgid=msgid, msgstr=msgstr, flags=list(flags))


def check_the_check():
    good = [message("{a} of {b}", "{b}: {a}"), message("x\t{a}", "y\t{a}"),
            message("%s is %d", "%2$d %1$s", ["c-format"]), message("60 % of it", "60 % d")]
    bad = [message("{a} of {b}", "{b}"), message("x\t{a}", "y {a}"), message("a", "{a}"),
           message("%s is %d", "%s", ["c-format"])]
    assert not any(faults(entry) for entry in good)
    assert all(faults(entry) for entry in bad)


check_the_check()
count = 0
labels = [entry.msgid for entry in polib.pofile(sys.argv[1] + "/gaugebox.pot")
          if "A label of the sheet" in entry.comment]
with open(sys.argv[1] + "/terms.md", encoding="utf-8") as file:
    explained = re.findall(r"[A-Z][A-Z1 ]+[A-Z1]", file.read())
for label in labels:
    if label not in explained:
        print(f"terms.md does not explain the label {label}")
        count += 1
count += len(labels) < 30
for name in sorted(glob.glob(sys.argv[1] + "/*.po")):
    for entry in polib.pofile(name):
        for text in faults(entry):
            print(f"{name}:{entry.linenum}: other figures, places or tabs: {text!r}")
            count += 1
sys.exit(count > 0)
